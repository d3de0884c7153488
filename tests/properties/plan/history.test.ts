import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plugSpot } from '../../../src/core/plan/edits/plugCable';
import { itemsOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import { metresBetween } from '../../../src/core/plan/runs';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';
import { HISTORY_STEPS, planStore } from '../../../src/desk/planStore';
import { drawFrom } from '../../plans/draw';
import { fullRoof } from '../../plans/fullRoof';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';
import { EDITS, someEdit } from './edits';

/** What lies in the folder of the edits and is none itself: what edits are made of. */
const NO_EDITS: ReadonlySet<string> = new Set([
  'anchorOf',
  'applyMotion',
  'areas',
  'beatRange',
  'blocked',
  'cautionsEntered',
  'cheats',
  'copies',
  'corners',
  'dropPeople',
  'dropReferences',
  'editCommon',
  'editRecord',
  'entourage',
  'expandGroup',
  'extent',
  'freeId',
  'freeLabel',
  'keysOnTrack',
  'limits',
  'motion',
  'nightRecord',
  'optionalLists',
  'putEntry',
  'shows',
  'tidy',
  'timedMarks',
  'ways',
  'withBeats',
  'withCarried',
]);

test('every edit is drawn', () => {
  const folder = fileURLToPath(new URL('../../../src/core/plan/edits/', import.meta.url));
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => path.replace(/^.*[\\/]/, '').replace(/\.ts$/, ''));
  expect(files.filter((name) => !NO_EDITS.has(name)).toSorted()).toEqual(Object.keys(EDITS).toSorted());
});

/** Makes every object in a value unchangeable, so that an edit that changes what it was given throws. */
function frozen<Value>(value: Value): Value {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  Object.freeze(value);
  for (const each of Object.values(value)) frozen(each);
  return value;
}

/** Ids of the items whose record is another object and yet says the same. */
function needlesslyNew(before: Plan, after: Plan): readonly string[] {
  const earlier = new Map(itemsOf(before).map(({ record }) => [record.id, record]));
  return itemsOf(after).flatMap(({ record }) => {
    const old = earlier.get(record.id);
    return old && old !== record && JSON.stringify(old) === JSON.stringify(record) ? [record.id] : [];
  });
}

/** Ends of cables that are plugged into something and lie elsewhere. */
function looseEnds(plan: Plan): readonly string[] {
  return plan.gear.flatMap((cable) => {
    if (cable.kind !== 'cable') return [];
    const ends = [
      [cable.plugs?.from, cable.path[0]],
      [cable.plugs?.to, cable.path[cable.path.length - 1]],
    ] as const;
    return ends.flatMap(([plug, spot]) => {
      const at = plug === undefined ? null : plugSpot(plan, plug);
      return at && metresBetween(at, spot) > 1e-5 ? [`${cable.id} at ${plug}`] : [];
    });
  });
}

const STEPS = 1000;
/** A smaller seed is no simpler case. */
const SEEDS = fc.noShrink(fc.integer({ min: 0, max: 1e9 }));

/** Makes edits one after another in the page's own store, and goes as far back as it remembers, and forth. */
function thereAndBack(start: Plan, seed: number, mostItems: number, steps: number): void {
  const draw = drawFrom(seed);
  const { startWith, edit, undo, redo } = planStore.getState();
  startWith(frozen(start), 'some.plan.json');
  const plans: Plan[] = [start];
  const names: string[] = [];
  const startText = JSON.stringify(start);
  for (let step = 0; step < steps; step += 1) {
    const before = planStore.getState().plan;
    const [name, change] = someEdit(before, draw, mostItems);
    const faults = edit(name, change);
    const where = `${name}, step ${step}`;
    expect(
      faults.map(({ sentence }) => sentence),
      where,
    ).toEqual([]);
    const after = frozen(planStore.getState().plan);
    if (after === before) continue;
    expect(JSON.stringify(after) === JSON.stringify(before), `${where} changes something`).toBe(false);
    expect(needlesslyNew(before, after), `${where} keeps what it does not change`).toEqual([]);
    expect(looseEnds(after), `${where} leaves plugged ends at their gear`).toEqual([]);
    plans.push(after);
    names.push(name);
  }
  const end = JSON.stringify(plans.at(-1));
  const oldest = Math.max(0, plans.length - 1 - HISTORY_STEPS);
  for (let at = plans.length - 1; at > oldest; at -= 1) {
    expect(planStore.getState().plan, `before undoing ${names[at - 1]}`).toBe(plans[at]);
    undo();
  }
  expect(planStore.getState().plan).toBe(plans[oldest]);
  expect(JSON.stringify(start)).toBe(startText);
  expect(planStore.temporal.getState().pastStates).toEqual([]);
  for (let at = oldest + 1; at < plans.length; at += 1) redo();
  expect(planStore.getState().plan).toBe(plans.at(-1));
  expect(JSON.stringify(planStore.getState().plan)).toBe(end);
  expect(parsePlan(planStore.getState().plan).ok).toBe(true);
  expect(plans.length, 'most edits do something').toBeGreaterThan(steps / 4);
}

test('of a thousand edits from nothing all that are remembered can be taken back and done again', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => thereAndBack(EMPTY_PLAN, seed, 25, STEPS)),
    { numRuns: cases(5) },
  );
});

test('of a thousand edits from a roof with one of each all that are remembered can be taken back and done again', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => thereAndBack(fullRoof(), seed, 40, STEPS)),
    { numRuns: cases(6) },
  );
});

test('edits from the demo can all be taken back and done again', () => {
  fc.assert(
    fc.property(SEEDS, (seed) => thereAndBack(readPlan(DEMO), seed, 130, 150)),
    { numRuns: cases(5) },
  );
});
