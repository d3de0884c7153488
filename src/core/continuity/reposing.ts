import { subtract, type Vec3 } from '../form/build/vector';
import { frameShapeOf, stateAt } from '../optics/camera';
import { panTiltToHold } from '../optics/operator';
import { type ReposeArgs, reposeCamera } from '../plan/edits/reposeCamera';
import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { Operator, Setup } from '../plan/schema/setup';
import type { LengthSystem } from '../units/lengths';
import { signedDegrees } from './continuityShots';
import { alongTheTrack, standingRefusal } from './standing';

/** Another way for a camera to stand, what of the plan changes for it, and why it cannot be had, if it cannot. */
export interface Reposing {
  readonly change: ReposeArgs;
  /** A sentence; null where the camera can stand there. */
  readonly why: string | null;
}

/** Where a camera is to be at an instant, and whose eyes are to lie where in its frame. */
export interface Repose {
  readonly position: Vec3;
  readonly rollDegrees: number;
  readonly lens: Lens;
  /** How far in a zoom is. */
  readonly focalMm: number;
  readonly performerId: string;
  readonly eyes: Vec3;
  /** 0..1 of the frame, from its left and top edges. */
  readonly at: readonly [number, number];
}

const within01 = (value: number): number => Math.min(1, Math.max(0, value));

/** How far in a zoom is at each key: as it was and so much more, so that it is right at the instant; null for others. */
function focalsOf(setup: Setup, { lens, focalMm }: Repose, nowMm: number): readonly number[] | null {
  const { longestMm } = lens;
  if (longestMm === undefined) return null;
  const keep = setup.lens === lens.id;
  return setup.move.keys.map((key) => {
    const asked = keep ? (key.focalMm ?? lens.focalMm) + focalMm - nowMm : focalMm;
    return Math.min(longestMm, Math.max(lens.focalMm, asked));
  });
}

/**
 * What it asks of the plan that a setup's camera stands and frames like this at an instant of the action's clock: every
 * key of its move goes and turns alike, on a track along it; an operator who holds somebody holds the one who is framed.
 */
export function reposing(
  plan: Plan,
  setup: Setup,
  seconds: number,
  wanted: Repose,
  lengths: LengthSystem = 'm',
): Reposing {
  const { eyes, at, rollDegrees, lens, performerId } = wanted;
  const now = stateAt(plan, setup, seconds);
  const track = alongTheTrack(plan, setup, wanted.position, seconds, lengths);
  const frame = frameShapeOf(plan, { ...setup, lens: lens.id }, wanted.focalMm);
  const aim = panTiltToHold(track.reached, eyes, at, rollDegrees, frame);
  const [x, y, z] = subtract(track.reached, now.position);
  const operator: Operator | null = setup.operator
    ? { hold: performerId, at: [within01(at[0]), within01(at[1])] }
    : null;
  const change: ReposeArgs = {
    setupId: setup.id,
    lens: lens.id,
    by: [x, y, z],
    alongMetres: track.alongMetres,
    panDegrees: signedDegrees(aim.headingDegrees - now.headingDegrees),
    tiltDegrees: aim.tiltDegrees - now.tiltDegrees,
    rollDegrees: rollDegrees - now.rollDegrees,
    focalMm: focalsOf(setup, wanted, now.focalMm),
    operator,
  };
  if (track.why !== null) return { change, why: track.why };
  const moved = reposeCamera(plan, change);
  const after = moved.setups.find(({ id }) => id === setup.id);
  if (!after) return { change, why: null };
  const isMoved = moved !== plan || Math.max(...[x, y, z].map(Math.abs)) < 1e-6;
  return {
    change,
    why: isMoved
      ? standingRefusal(moved, after, seconds)
      : 'The move would tilt the camera beyond straight up or down.',
  };
}
