import { clothPlace } from '../../core/form/gear/cloth';
import type { LampForm } from '../../core/form/types';
import type { Plan } from '../../core/plan/schema/plan';

/**
 * The items of lamps that shine at a diffusion frame: whose axis meets one. Without a shadow their light would go
 * through it straight, though the frame gives it on itself.
 */
export function throughFrames(plan: Plan, lamps: readonly LampForm[]): ReadonlySet<string> {
  const frames = plan.gear.flatMap((gear) =>
    gear.kind === 'frame' ? [{ m: clothPlace(gear, plan).placement, size: gear.size }] : [],
  );
  const found = new Set<string>();
  for (const { itemId, position, direction } of frames.length > 0 ? lamps : []) {
    const meets = frames.some(({ m, size }) => {
      // In the cloth's own frame, whose plane is z = 0.
      const own = [0, 1, 2].map((axis) => {
        const column = [m[axis], m[4 + axis], m[8 + axis]];
        const along = (v: readonly number[]) => column.reduce((sum, each, k) => sum + each * v[k], 0);
        return {
          at: along([position[0] - m[3], position[1] - m[7], position[2] - m[11]]),
          way: along(direction),
        };
      });
      const metres = -own[2].at / own[2].way;
      return (
        metres > 0 &&
        Math.abs(own[0].at + metres * own[0].way) < size[0] / 2 &&
        Math.abs(own[1].at + metres * own[1].way) < size[1] / 2
      );
    });
    if (meets) found.add(itemId);
  }
  return found;
}
