import { subtract } from '../form/build/vector';
import { stateAt } from '../optics/camera';
import { type ReframeArgs, reframe } from '../plan/edits/reframe';
import type { Spot } from '../plan/schema/numbers';
import type { Piece } from '../plan/schema/pieces';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import type { LengthSystem } from '../units/lengths';
import { hypot } from '../units/steadyMath';
import { type SameFraming, sameFraming } from './sameFraming';
import { alongTheTrack, standingRefusal } from './standing';

/** The same framing on another lens, what of the plan changes for it, and why it cannot be had, if it cannot. */
export interface Reframing {
  readonly same: SameFraming;
  readonly change: ReframeArgs;
  /** A sentence; null where the camera can stand there. */
  readonly why: string | null;
}

/**
 * What the same framing on another lens asks of the plan: every key of the move goes the way that the camera goes at
 * the instant asked for, on a track along it. Null where nobody is there to be framed.
 */
export function reframing(
  plan: Plan,
  setup: Setup,
  args: {
    readonly lensId: string;
    readonly performerId: string;
    readonly seconds: number;
    readonly behindMetres: number;
    readonly lengths?: LengthSystem;
  },
): Reframing | null {
  const same = sameFraming(plan, setup, args);
  if (!same) return null;
  const { seconds, lensId, lengths = 'm' } = args;
  const [x, y, z] = subtract(same.position, stateAt(plan, setup, seconds).position);
  const { alongMetres, why } = alongTheTrack(plan, setup, same.position, seconds, lengths);
  const change: ReframeArgs = { setupId: setup.id, lens: lensId, by: [x, y, z], alongMetres };
  if (why !== null) return { same, change, why };
  const moved = reframe(plan, change);
  const after = moved.setups.find(({ id }) => id === setup.id);
  return { same, change, why: after ? standingRefusal(moved, after, seconds) : null };
}

/** Where a set piece is, as one spot; null for what is all over the place. */
function middleOf(piece: Piece): Spot | null {
  if ('at' in piece) return [piece.at[0], piece.at[2]];
  // What runs round the roof lies every way.
  const spots: readonly Spot[] = 'path' in piece && !('closed' in piece && piece.closed) ? piece.path : [];
  if (spots.length === 0) return null;
  const sum = spots.reduce(([a, b], [c, d]): Spot => [a + c, b + d], [0, 0]);
  return [sum[0] / spots.length, sum[1] / spots.length];
}

/** The cosine of the widest angle off the way at which something still lies that way: 25 degrees. */
const THAT_WAY = 0.906;

/** The label of the set piece that a way leads towards, the straightest ahead; null for none. Spots in metres. */
export function towardsWhat(plan: Plan, from: Readonly<Spot>, to: Readonly<Spot>): string | null {
  const way: Spot = [to[0] - from[0], to[1] - from[1]];
  const long = hypot(way[0], way[1]);
  let best: { readonly label: string; readonly along: number } | null = null;
  for (const piece of plan.pieces) {
    const middle =
      piece.kind === 'deck' || piece.kind === 'skyline block' || piece.hidden ? null : middleOf(piece);
    if (!middle) continue;
    const there: Spot = [middle[0] - from[0], middle[1] - from[1]];
    const along = (there[0] * way[0] + there[1] * way[1]) / (hypot(there[0], there[1]) * long);
    if (along >= THAT_WAY && (!best || along > best.along)) best = { label: piece.label, along };
  }
  return best?.label ?? null;
}
