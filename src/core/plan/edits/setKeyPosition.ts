import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';

/** Puts the entrance pupil of one camera key at a point, metres; its pan and tilt stay. */
export function setKeyPosition(
  plan: Plan,
  args: { readonly setupId: string; readonly keyIndex: number; readonly position: Point },
): Plan {
  return editSetup(plan, args.setupId, (setup) => {
    const key = setup.move.keys[args.keyIndex];
    if (!key || key.position.every((value, axis) => value === args.position[axis])) return setup;
    const keys = setup.move.keys.with(args.keyIndex, { ...key, position: args.position });
    return { ...setup, move: { ...setup.move, keys } };
  });
}
