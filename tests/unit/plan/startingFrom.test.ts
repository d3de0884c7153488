import { expect, test } from 'vitest';
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
