import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { litSetup, reportOf } from '../../src/core/report/report';
import { bundle } from '../../src/workshop/bundle.mjs';
import { COMMAND_INPUTS, HOUSE } from '../../src/workshop/house.mjs';
import { DEMO, readPlan } from '../plans/readPlan';
import { smallRoof } from '../unit/smallRoof';
import { movingPlan } from './sight/movingPlans';

/** What a thread of its own, running the bundled program, says of a plan's setups, asked in the given order. */
async function fromThread(plan: Plan, places: readonly number[]): Promise<string[]> {
  const folder = await bundle({
    name: 'standclear',
    entries: { main: 'src/cli/main.ts', worker: 'src/cli/worker.ts' },
    inputs: COMMAND_INPUTS,
  });
  const worker = new Worker(join(folder, 'worker.mjs'), { workerData: { plan, models: new Map() } });
  try {
    const reports: string[] = [];
    for (const place of places) {
      worker.postMessage(place);
      const report = await new Promise((resolve, reject) => {
        worker.once('message', resolve);
        worker.once('error', reject);
      });
      reports[place] = JSON.stringify(report);
    }
    return reports;
  } finally {
    await worker.terminate();
  }
}

const fromHere = (plan: Plan): string[] => plan.setups.map((setup) => JSON.stringify(litSetup(plan, setup)));

describe('the same plan gives the same bytes', () => {
  test.each([
    ['a small roof', () => smallRoof(0.5)],
    ['a camera and performers who move', () => movingPlan(1)],
    ['a whip pan', () => movingPlan(3)],
  ])('here and in a thread, whatever was asked before: %s', async (_, make) => {
    const plan = make();
    const backwards = plan.setups.map((_setup, place) => plan.setups.length - 1 - place);
    const here = fromHere(plan);
    expect(await fromThread(plan, backwards)).toEqual(here);
    // Again, with all that has been kept of the first time, and from a copy of the plan, with nothing kept.
    expect(fromHere(plan)).toEqual(here);
    expect(fromHere(structuredClone(plan))).toEqual(here);
  });

  test('of the demo night at an instant, here and in a process of its own', () => {
    const launcher = join(HOUSE, 'src/workshop/standclear.mjs');
    const ended = spawnSync(
      process.execPath,
      [launcher, 'report', join(HOUSE, DEMO), '--json', '--at', '20'],
      {
        encoding: 'utf8',
        cwd: HOUSE,
      },
    );
    expect(ended.status).toBe(0);
    const here = reportOf(readPlan(DEMO), { at: 20 });
    expect(here.setups.length).toBeGreaterThan(3);
    // The command goes on with the night, after all that is the report's.
    const own = JSON.stringify(here, null, 2).slice(0, -2);
    expect(ended.stdout.slice(0, own.length)).toBe(own);
    expect(Object.keys(JSON.parse(ended.stdout))).toEqual([...Object.keys(here), 'night']);
  });

  test('of one setup, alone or among the others', () => {
    const plan = smallRoof(0.5);
    const among = reportOf(plan).setups;
    for (const setup of among) {
      const [alone] = reportOf(plan, { setupIds: [setup.id] }).setups;
      expect(JSON.stringify(alone)).toBe(JSON.stringify(setup));
    }
  });
});
