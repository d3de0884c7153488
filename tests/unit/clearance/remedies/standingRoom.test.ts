import { expect, test } from 'vitest';
import { standingRoom } from '../../../../src/core/clearance/remedies/standingRoom';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { smallRoof } from '../../smallRoof';
import { standAt, stillRoof } from './remedied';

const room = (plan: Plan): ((spot: Spot) => boolean) => standingRoom(plan, 'stand', new Set(['stand']));

test('leaves the feet of other gear as much room as it takes up', () => {
  const cart = {
    id: 'cart',
    label: 'Cart',
    kind: 'cart' as const,
    at: [3, 0, -4] as [number, number, number],
    headingDegrees: 0,
    size: [0.6, 1, 0.8] as [number, number, number],
    monitors: 1,
  };
  const canStand = room(stillRoof([standAt(), standAt({ id: 'other', at: [-3, 0, -4] }), cart]));
  expect(canStand([-2.65, -4])).toBe(false);
  expect(canStand([-2.55, -4])).toBe(true);
  // Half the diagonal of the cart, and 0.2 m.
  expect(canStand([3.65, -4])).toBe(false);
  expect(canStand([3.75, -4])).toBe(true);
});

test('keeps out of walks, of marks and of where a camera is, on the deck and not over its edge', () => {
  const roof = smallRoof();
  const canStand = room({ ...stillRoof([standAt({ at: [5, 0, 5] })]), cast: roof.cast });
  // From (0, -2) to (1.5, -1): its middle, and its end; half the feet's circle and half a breadth of shoulders off.
  expect(canStand([0.75, -1.5])).toBe(false);
  expect(canStand([1.5, -0.3])).toBe(false);
  expect(canStand([1.5, 0])).toBe(true);
  // The camera stands at (0, 4).
  expect(canStand([0.45, 4])).toBe(false);
  expect(canStand([0.55, 4])).toBe(true);
  expect(canStand([9.9, 7])).toBe(true);
  expect(canStand([10.1, 7])).toBe(false);
});

test('lets a thing stand as near as it does already', () => {
  const canStand = room(stillRoof([standAt({ at: [0.3, 0, 4] })]));
  expect(canStand([0.31, 4])).toBe(true);
  expect(canStand([0.25, 4])).toBe(false);
});
