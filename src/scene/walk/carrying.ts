import type { Spot } from '../../core/plan/schema/numbers';
import type { Piece } from '../../core/plan/schema/pieces';
import type { Plan } from '../../core/plan/schema/plan';
import { topAt } from '../../core/plan/surfaces';
import type { Ray } from '../../core/sight/rays';
import { onLevel } from './closeness';

/** A place on something that carries things. */
export interface Carrying {
  readonly spot: Spot;
  readonly metres: number;
  /** The set piece; null for the level that is taken where the ray meets none. */
  readonly id: string | null;
  /** Along the ray, metres. */
  readonly distance: number;
}

/** Two heights nearer than this are one: a sloping roof is found by trying, metres. */
const SAME_METRES = 1e-4;
const TRIES = 6;

/** Every set piece that a ray meets from above and that one may stand on, nearest first; those in `except` are looked through. */
export function carriersAlong(plan: Plan, ray: Ray, except: ReadonlySet<string>): readonly Carrying[] {
  const found: Carrying[] = [];
  for (const piece of plan.pieces) {
    const level = except.has(piece.id) || piece.hidden ? null : highestOf(piece);
    const met = level === null ? null : meetTop(piece, ray, level);
    if (met) found.push(met);
  }
  return found.sort((a, b) => a.distance - b.distance);
}

/**
 * Where a ray first meets something that one may stand on; where it meets nothing of the kind, the place on the level
 * at `levelMetres`. Null where the ray meets neither: it looks at the sky.
 */
export function carrierAlong(
  plan: Plan,
  ray: Ray,
  levelMetres: number,
  except: ReadonlySet<string>,
): Carrying | null {
  const [first] = carriersAlong(plan, ray, except);
  if (first) return first;
  const place = onLevel(ray, levelMetres);
  if (!place) return null;
  return { spot: [place[0], place[2]], metres: levelMetres, id: null, distance: alongTo(ray, levelMetres) };
}

const alongTo = ({ origin, direction }: Ray, height: number): number => (height - origin[1]) / direction[1];

function highestOf(piece: Piece): number | null {
  if (piece.kind === 'deck') return piece.topMetres;
  const isCarrying =
    piece.kind === 'box' || piece.kind === 'riser' || piece.kind === 'stair house' || piece.kind === 'shed';
  return isCarrying ? piece.at[1] + piece.size[1] : null;
}

function meetTop(piece: Piece, ray: Ray, highest: number): Carrying | null {
  // From below one sees what carries nothing.
  if (ray.direction[1] >= 0) return null;
  let level = highest;
  for (let tries = 0; tries < TRIES; tries += 1) {
    const place = onLevel(ray, level);
    const spot: Spot | null = place && [place[0], place[2]];
    const metres = spot && topAt(piece, spot);
    if (!spot || metres === null) return null;
    if (Math.abs(metres - level) < SAME_METRES) {
      return { spot, metres, id: piece.id, distance: alongTo(ray, level) };
    }
    level = metres;
  }
  return null;
}
