import { expect, test } from 'vitest';
import { letShow } from '../../../src/core/plan/edits/letShow';
import { parsePlan } from '../../../src/core/plan/parse';
import { startingFrom } from '../../../src/core/plan/startingFrom';
import { DEMO, readPlan } from '../../plans/readPlan';

const demo = readPlan(DEMO);
const CHOICES = [false, true].flatMap((gear) =>
  [false, true].flatMap((cast) => [false, true].map((setups) => ({ gear, cast, setups }))),
);

test.each(CHOICES)('a plan that starts from another is whole: %o', (keeping) => {
  const begun = startingFrom(demo, 'Loft Night, again', keeping);
  const read = parsePlan(begun);
  expect(read.ok ? [] : read.faults).toEqual([]);
  expect(begun.title).toBe('Loft Night, again');
  expect(begun.pieces).toBe(demo.pieces);
  expect(begun.gear).toHaveLength(keeping.gear ? demo.gear.length : 0);
  expect(begun.cast).toHaveLength(keeping.cast ? demo.cast.length : 0);
  expect(begun.setups).toHaveLength(keeping.setups ? demo.setups.length : 0);
});

test.each(CHOICES)('what was let show in a setup stays with the setups: %o', (keeping) => {
  const ids = [demo.pieces[0].id, demo.cast[0].id, demo.gear[0].id];
  const setupId = demo.setups[0].id;
  const shown = ids.reduce((plan, id) => letShow(plan, { id, setupId, reason: 'It is of the place.' }), demo);
  const begun = startingFrom(shown, 'Loft Night, again', keeping);
  const read = parsePlan(begun);
  expect(read.ok ? [] : read.faults).toEqual([]);
  expect(begun.pieces[0].shows?.length ?? 0).toBe(keeping.setups ? 1 : 0);
});
