import type { Vec3 } from '../../../core/form/build/vector';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { snapDrag } from '../../../desk/tools/snapDrag';
import type { WalkView } from '../walkView';
import type { Held } from './grasp';

/** How far on the picture things catch, pixels. */
const CATCH_PIXELS = 12;

/** Where something that is dragged comes to rest. */
export interface Rest {
  readonly spot: Spot;
  readonly words: readonly string[];
  /** Lines that say why, at a height. */
  readonly guides: (metres: number) => readonly (readonly [Vec3, Vec3])[];
}

/**
 * What brings a drag to rest, from where it began; it keeps hold of what it has caught. `ids` is all that moves and so
 * cannot be caught on.
 */
export function restingFrom(
  plan: Plan,
  ids: readonly string[],
  start: Spot,
): (to: Spot, held: Held, view: WalkView, metres: number) => Rest {
  let caught: readonly string[] = [];
  return (to, held, view, metres) => {
    const { spot, why } = snapDrag(plan, ids, start, to, {
      reachMetres: CATCH_PIXELS * view.metresPerPixelAt([to[0], metres, to[1]]),
      free: held.alt,
      straight: held.shift,
      held: caught,
    });
    caught = why.map(({ key }) => key);
    return {
      spot,
      words: why.flatMap(({ kind, word }) => (kind === 'grid' ? [] : [word])),
      guides: (level) =>
        why.flatMap(({ guide }) =>
          guide ? [[lifted(guide[0], level), lifted(guide[1], level)] as const] : [],
        ),
    };
  };
}

const lifted = ([x, z]: readonly [number, number], metres: number): Vec3 => [x, metres, z];
