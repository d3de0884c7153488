import { once } from 'node:events';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { type MessagePort, parentPort, Worker } from 'node:worker_threads';
import type { Plan } from '../../src/core/plan/schema/plan';
import { setupReport } from '../../src/core/report/setupReport';
import { crowdedPlan } from '../plans/crowd';
import { ms, printTable, type Row } from './table';

/**
 * Whole spans of a night of twenty ten-second moves: one after another on one core, then shared out to workers, each of
 * which takes the next setup as soon as it is free; and how an instant grows with the items.
 */
const timed = (task: () => void): number => {
  const start = performance.now();
  task();
  return performance.now() - start;
};

const nightPlan = () => crowdedPlan(60, 20, 1);

/** What a worker is told to take a plan that it has not seen. */
const ANEW = -1;

/** In a worker: reads the setups of the night whose places come in. */
function answer(port: MessagePort): void {
  let plan = nightPlan();
  port.on('message', (place: number) => {
    if (place === ANEW) plan = nightPlan();
    else setupReport(plan, plan.setups[place]);
    port.postMessage(place);
  });
}

async function told(worker: Worker, place: number): Promise<void> {
  const answered = once(worker, 'message');
  worker.postMessage(place);
  await answered;
}

/** How long so many workers take over the night: as they begin, and over the same anew, as after an edit; ms. */
async function sharedOut(setups: number, cores: number): Promise<readonly [first: number, again: number]> {
  const workers = Array.from({ length: cores }, () => new Worker(fileURLToPath(import.meta.url)));
  const night = async (): Promise<number> => {
    await Promise.all(workers.map((worker) => told(worker, ANEW)));
    const start = performance.now();
    let next = 0;
    await Promise.all(
      workers.map(async (worker) => {
        while (next < setups) {
          next += 1;
          await told(worker, next - 1);
        }
      }),
    );
    return performance.now() - start;
  };
  const first = await night();
  const again = await night();
  await Promise.all(workers.map((worker) => worker.terminate()));
  return [first, again];
}

/** The middle of five times that an instant of a plan takes, ms. */
function instantMs(plan: Plan): number {
  const at = plan.beats[0].atSeconds;
  setupReport(plan, plan.setups[0], { at });
  const runs = Array.from({ length: 5 }, () => timed(() => setupReport(plan, plan.setups[0], { at })));
  return runs.sort((a, b) => a - b)[2];
}

async function measure(): Promise<void> {
  const rows: Row[] = [];
  const night = nightPlan();
  setupReport(night, night.setups[0]);
  const each = night.setups.map((setup) => timed(() => setupReport(night, setup)));
  const sum = each.reduce((total, time) => total + time, 0);
  rows.push({
    what: 'one 10 s move, spans to 1/24 s, middle of 20',
    reach: '',
    reached: ms([...each].sort((a, b) => a - b)[10]),
  });
  rows.push({ what: 'the night, 20 such setups, one core', reach: '', reached: ms(sum) });
  const stills = timed(() => {
    for (const setup of night.setups) setupReport(night, setup, { at: night.beats[0].atSeconds });
  });
  rows.push({ what: 'first answers: stills of all 20 setups', reach: '≤ 300 ms', reached: ms(stills) });

  const cores = Math.min(2, availableParallelism());
  const [first, again] = await sharedOut(night.setups.length, cores);
  rows.push({
    what: `the night, shared out to ${cores} workers that have just begun`,
    reach: '≤ 10,000 ms',
    reached: ms(first),
  });
  rows.push({
    what: 'the same night anew, in the same workers',
    reach: '≤ 10,000 ms',
    reached: ms(again),
  });

  const least = instantMs(crowdedPlan(20, 1, 2));
  rows.push({ what: 'one instant, 20 items', reach: '', reached: ms(least) });
  for (const factor of [3, 10]) {
    const time = instantMs(crowdedPlan(20 * factor, 1, 2));
    rows.push({
      what: `one instant, ${20 * factor} items`,
      reach: `≤ ${(factor * 1.1).toFixed(1)} times`,
      reached: `${ms(time)}, ${(time / least).toFixed(1)} times`,
    });
  }
  printTable(rows);
}

if (parentPort) answer(parentPort);
else await measure();
