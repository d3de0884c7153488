import type { Stance } from '../../plan/schema/cast';
import { mix, type Vec3 } from '../build/vector';
import type { Stay, Track, Walk } from './track';

/** A performer's movement at an instant, before any pose. */
export interface Motion {
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly stance: Stance;
  /** 0 to 1 over a cycle of two steps; null at a mark. */
  readonly walkPhase: number | null;
  readonly speedMetresPerSecond: number;
  readonly isMoving: boolean;
  /** The stance that a walk comes out of or goes into, and how much of the stride there is already or still. */
  readonly settling: { readonly stance: Stance; readonly strideShare: number };
}

/** Time of the turn at each end of a walk; common practice, no source. */
const TURN_SECONDS = 0.5;
/** Time in which a stance becomes a stride and back; common practice, no source. */
const SETTLE_SECONDS = 0.45;

const smooth = (share: number): number => {
  const inside = Math.min(1, Math.max(0, share));
  return inside * inside * (3 - 2 * inside);
};

/** The short way round from one heading to another, −180 to 180 degrees. */
const turnBetween = (from: number, to: number): number => ((((to - from + 180) % 360) + 360) % 360) - 180;

const resting = (stay: Stay): Motion => ({
  at: stay.at,
  headingDegrees: stay.headingDegrees,
  stance: stay.stance,
  walkPhase: null,
  speedMetresPerSecond: 0,
  isMoving: false,
  settling: { stance: stay.stance, strideShare: 0 },
});

/** Metres gone and speed after `gone` seconds: even, with equal ramps at both ends. */
function progress(walk: Walk, gone: number): { readonly metres: number; readonly speed: number } {
  const { seconds, rampSeconds: ramp } = walk;
  const cruising = walk.metres / (seconds - ramp);
  if (ramp > 0 && gone < ramp)
    return { metres: (cruising * gone * gone) / (2 * ramp), speed: (cruising * gone) / ramp };
  const left = seconds - gone;
  if (ramp > 0 && left < ramp) {
    return { metres: walk.metres - (cruising * left * left) / (2 * ramp), speed: (cruising * left) / ramp };
  }
  return { metres: cruising * (gone - ramp / 2), speed: cruising };
}

function walking(from: Stay, to: Stay, walk: Walk, gone: number): Motion {
  const left = walk.seconds - gone;
  if (walk.headingDegrees === null) {
    // Nowhere to go: only a turn on the spot, just before the beat.
    const turn = Math.min(TURN_SECONDS, walk.seconds);
    const share = smooth(1 - left / turn);
    return {
      ...resting(share < 0.5 ? from : to),
      at: mix(from.at, to.at, share),
      headingDegrees: from.headingDegrees + share * turnBetween(from.headingDegrees, to.headingDegrees),
    };
  }
  const turn = Math.min(TURN_SECONDS, walk.seconds / 2);
  const headingDegrees =
    gone < turn
      ? from.headingDegrees + smooth(gone / turn) * turnBetween(from.headingDegrees, walk.headingDegrees)
      : to.headingDegrees + smooth(left / turn) * turnBetween(to.headingDegrees, walk.headingDegrees);
  const settle = Math.min(SETTLE_SECONDS, walk.seconds / 2);
  const { metres, speed } = progress(walk, gone);
  const strides = walk.stridesBefore + metres / walk.strideMetres;
  return {
    at: mix(from.at, to.at, metres / walk.metres),
    headingDegrees,
    stance: walk.gait,
    walkPhase: strides - Math.floor(strides),
    speedMetresPerSecond: speed,
    isMoving: true,
    settling: {
      stance: gone < left ? from.stance : to.stance,
      strideShare: smooth(Math.min(gone, left) / settle),
    },
  };
}

/** Where a track has its performer at an instant; null for a track without marks. */
export function motionAt(track: Track, seconds: number): Motion | null {
  const { stays, walks } = track;
  if (stays.length === 0) return null;
  // Of marks at the same instant the last one counts.
  let k = 0;
  while (k + 1 < stays.length && stays[k + 1].fromSeconds <= seconds) k += 1;
  const stay = stays[k];
  if (k === walks.length || seconds <= stay.untilSeconds) return resting(stay);
  return walking(stay, stays[k + 1], walks[k], seconds - stay.untilSeconds);
}
