import { expect, test } from 'vitest';
import { makeItem } from '../../../src/core/kit/palette';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { footOf, surfaceOfFoot, surfaceUnder } from '../../../src/core/plan/surfaces';
import { EMPTY_PLAN } from '../../../src/desk/emptyPlan';

const put = (plan: Plan, entryId: string, spots: readonly Spot[]): Plan =>
  makeItem(plan, entryId, { spots })?.plan ?? plan;

const SQUARE: readonly Spot[] = [
  [-6, -6],
  [6, -6],
  [6, 6],
  [-6, 6],
];
const roof = put(put(EMPTY_PLAN, 'deck', SQUARE), 'deck-hole', [
  [4, 4],
  [5, 4],
  [5, 5],
  [4, 5],
]);

/** The id of the set piece that an item stands on; null where it hangs, stands on nothing, or has no foot. */
function standsOn(plan: Plan, id: string): string | null {
  const foot = footOf(plan, id);
  return foot ? (surfaceOfFoot(plan, foot.spot, foot.metres, new Set([id]))?.id ?? null) : null;
}

test('a deck, its edge, its hole, and nothing', () => {
  expect(surfaceUnder(roof, [0, 0])).toEqual({ metres: 0, id: 'deck-1' });
  expect(surfaceUnder(roof, [6, 0])).toEqual({ metres: 0, id: 'deck-1' });
  expect(surfaceUnder(roof, [4.5, 4.5])).toEqual({ metres: 0, id: null });
  expect(surfaceUnder(roof, [9, 0])).toEqual({ metres: 0, id: null });
});

test('levels stand on each other, and the highest counts', () => {
  const levels = put(put(roof, 'riser', [[0, 0]]), 'crate', [[0.5, 0]]);
  expect(surfaceUnder(levels, [0.5, 0])).toEqual({ metres: 0.9, id: 'box-1' });
  expect(surfaceUnder(levels, [0.5, 0], { belowMetres: 0.5 })).toEqual({ metres: 0.4, id: 'riser-1' });
  expect(surfaceUnder(levels, [0.5, 0], { except: new Set(['box-1', 'riser-1']) }).id).toBe('deck-1');
  expect(standsOn(levels, 'box-1')).toBe('riser-1');
  expect(standsOn(levels, 'riser-1')).toBe('deck-1');
  expect(standsOn(levels, 'nobody')).toBeNull();
});

test('roofs: the slab of a stair house, the slope of a shed', () => {
  const house = put(roof, 'stair-house', [[0, 0]]);
  // 2.8 m to the top of the coping, which stands 8 cm over the slab.
  expect(surfaceUnder(house, [1, 1]).metres).toBeCloseTo(2.72, 9);
  expect(surfaceUnder(house, [1.79, 0]).id, 'on the overhang').toBe('stair-house-1');
  const shed = put(roof, 'shed', [[0, 0]]);
  // It faces −z: 2.2 m at the front edge of the roof, 5 degrees down to the back.
  expect(surfaceUnder(shed, [0, -1.05]).metres).toBeCloseTo(2.2, 9);
  expect(surfaceUnder(shed, [0, 1.05]).metres).toBeCloseTo(2.2 - 2.1 * Math.tan(Math.PI / 36), 9);
});

test('what hangs stands on nothing', () => {
  const lamp = put(roof, 'practical-string-bulb', [[1, 1]]);
  expect(standsOn(lamp, 'practical-1')).toBeNull();
  expect(
    standsOn(
      put(roof, 'fence', [
        [0, 0],
        [1, 0],
      ]),
      'fence-1',
    ),
    'a run has no one foot',
  ).toBeNull();
});
