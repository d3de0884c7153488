import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import bunny from '@pmndrs/assets/models/bunny.glb.js';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { run } from '../../../src/cli/run';
import { dropModel } from '../../../src/core/form/models/modelShelf';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { DEMO, readPlan } from '../../plans/readPlan';
import { fakeTerminal } from './fakeTerminal';

const glb = Buffer.from(bunny.slice(bunny.indexOf(',') + 1), 'base64');
const sha256 = createHash('sha256').update(glb).digest('hex');
let folder = '';

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'standclear-models-'));
  dropModel(sha256);
});
afterEach(() => rmSync(folder, { recursive: true }));

/** The demo with a model on its roof, written into the folder. */
function planFile(name = 'bunny.glb'): string {
  const demo = readPlan(DEMO);
  const plan: Plan = {
    ...demo,
    pieces: [
      ...demo.pieces,
      {
        id: 'model-1',
        label: 'Bunny',
        kind: 'model',
        at: [0, 0, 0],
        headingDegrees: 0,
        asset: { sha256, name, bytes: glb.length },
        up: 'y',
        metresPerUnit: 1,
        extent: { lowest: [-0.914, -0.891, -0.696], highest: [0.917, 0.94, 0.699] },
      },
    ],
  };
  const path = join(folder, 'night.plan.json');
  writeFileSync(path, serialisePlan(plan));
  return path;
}

interface Reported {
  readonly notices: readonly { readonly sentence: string }[];
  readonly setups: readonly {
    readonly items: readonly { readonly id: string; readonly parts: readonly { readonly name: string }[] }[];
  }[];
}

async function report(path: string): Promise<{ readonly report: Reported; readonly said: string }> {
  const terminal = fakeTerminal();
  const status = await run(['report', path, '--json', '--at', '24'], terminal);
  expect(status, terminal.errors()).toBe(0);
  const found: Reported = JSON.parse(terminal.printed());
  return { report: found, said: terminal.errors() };
}

const partsOfBunny = ({ setups }: Reported): string[] =>
  setups.flatMap(({ items }) =>
    items.filter(({ id }) => id === 'model-1').flatMap(({ parts }) => parts.map(({ name }) => name)),
  );

test('a model whose file lies beside the plan is judged by its own triangles', async () => {
  writeFileSync(join(folder, 'bunny.glb'), glb);
  const { report: found, said } = await report(planFile());
  expect(partsOfBunny(found)).toContain('mesh');
  expect(found.notices.map(({ sentence }) => sentence).join()).not.toContain('bunny.glb');
  expect(said).not.toContain('bunny.glb');
});

test('a missing file is a notice, and a box stands for the model', async () => {
  const { report: found } = await report(planFile());
  expect(new Set(partsOfBunny(found))).toEqual(new Set(['box']));
  expect(found.notices.map(({ sentence }) => sentence)).toContain(
    'The file of Bunny, bunny.glb, is not here: a box of its size stands for it. Give it the file.',
  );
});

test('another file of the same name is left alone, and said', async () => {
  writeFileSync(join(folder, 'bunny.glb'), 'not the bunny');
  const { report: found, said } = await report(planFile());
  expect(new Set(partsOfBunny(found))).toEqual(new Set(['box']));
  expect(said).toContain('is another file than the one that the plan was made with');
});

test('a name that leads out of the folder is not followed', async () => {
  writeFileSync(join(folder, 'bunny.glb'), glb);
  const { report: found } = await report(planFile('../bunny.glb'));
  expect(new Set(partsOfBunny(found))).toEqual(new Set(['box']));
});
