import type { Plan } from '../../core/plan/schema/plan';
import { type Bounds, boundsOf, middleOf, type Spot } from './geometry/spots';
import { groundOf } from './ground';
import { shownItems } from './shown';

const isIn = ([x, y]: Spot, [left, top, right, bottom]: Bounds): boolean =>
  x >= left && x <= right && y >= top && y <= bottom;

/**
 * Ids of what a rectangle of the pane takes in: of what stands on the ground its middle, of a run all of its corners.
 * What is locked or hidden, and the skyline beyond the roof, is not taken.
 */
export function itemsWithin(
  plan: Plan,
  seconds: number,
  rectangle: Bounds,
  at: (spot: Spot) => Spot,
): readonly string[] {
  return shownItems(plan).flatMap((item) => {
    const { id, locked } = item.record;
    if (locked || (item.section === 'piece' && item.record.kind === 'skyline block')) return [];
    const ground = groundOf(plan, id, seconds);
    const outline = ground?.outline.map(at) ?? [];
    const bounds = boundsOf(outline);
    if (!ground || !bounds) return [];
    const isRun = !ground.closed || (item.section === 'piece' && 'outline' in item.record);
    const taken = isRun ? outline.every((spot) => isIn(spot, rectangle)) : isIn(middleOf(bounds), rectangle);
    return taken ? [id] : [];
  });
}
