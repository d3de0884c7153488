import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';
import { tidyPoint } from './tidy';

/** Puts the entrance pupil of one camera key at a point, metres; its pan and tilt stay. */
export function setKeyPosition(
  plan: Plan,
  args: { readonly setupId: string; readonly keyIndex: number; readonly position: Point },
): Plan {
  return editSetup(plan, args.setupId, (setup) => {
    const key = setup.move.keys[args.keyIndex];
    const position = tidyPoint(args.position);
    if (!key || key.position.every((value, axis) => value === position[axis])) return setup;
    const keys = setup.move.keys.with(args.keyIndex, { ...key, position });
    return { ...setup, move: { ...setup.move, keys } };
  });
}
