import type { LengthSystem } from '../../core/units/lengths';
import type { Spot } from './geometry/spots';

/** What a drag snaps to: 5 cm, or 2 inches where lengths are read in feet. */
export const snapMetres = (lengths: LengthSystem): number => (lengths === 'm' ? 0.05 : 2 * 0.0254);

/** Micrometres: a snapped place leaves no binary noise in the plan. */
const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6 + 0;

/** Where a drag from `from` by `by` metres comes to rest: on the snap's grid; with `locked`, along one axis only. */
export function snapped(from: Spot, by: Spot, snap: number, locked: boolean): Spot {
  const alongX = Math.abs(by[0]) >= Math.abs(by[1]);
  const to = (axis: 0 | 1): number => {
    const held = locked && alongX !== (axis === 0);
    // An axis that is not moved keeps its value, on the grid or off it.
    if (held || Math.abs(by[axis]) < snap / 2) return from[axis];
    return tidy(Math.round((from[axis] + by[axis]) / snap) * snap);
  };
  return [to(0), to(1)];
}
