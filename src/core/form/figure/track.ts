import type { Mark, Performer, Stance } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { atan2, hypot } from '../../units/steadyMath';
import type { Vec3 } from '../build/vector';
import { type Gait, STEP_SHARE } from './pose/gait';

/** A mark with the instants between which the performer stays there. */
export interface Stay {
  readonly mark: Mark;
  readonly at: Vec3;
  readonly headingDegrees: number;
  readonly stance: Stance;
  readonly fromSeconds: number;
  readonly untilSeconds: number;
}

/** The way from one stay to the next. */
export interface Walk {
  readonly metres: number;
  readonly seconds: number;
  readonly rampSeconds: number;
  readonly gait: Gait;
  readonly strideMetres: number;
  /** Compass heading of the way, null where there is none to go. */
  readonly headingDegrees: number | null;
  /** Strides gone before it begins. */
  readonly stridesBefore: number;
}

/** A performer's marks in the order of their beats; `walks[k]` leads from `stays[k]` to `stays[k + 1]`. */
export interface Track {
  readonly stays: readonly Stay[];
  readonly walks: readonly Walk[];
}

/** Faster than this a performer runs; common practice, no source. */
const RUN_ABOVE_METRES_PER_SECOND = 2.2;
/** A hold is cut short where the next mark could else only be reached by a jump; common practice, no source. */
const FASTEST_METRES_PER_SECOND = 8;
/** Time to get going and to stop; common practice, no source. */
const RAMP_SECONDS = 0.4;

const NOWHERE_METRES = 0.001;

function walkBetween(from: Stay, to: Stay, stature: number, stridesBefore: number): Walk {
  const [dx, dz] = [to.at[0] - from.at[0], to.at[2] - from.at[2]];
  const metres = hypot(dx, dz);
  const seconds = Math.max(0, to.fromSeconds - from.untilSeconds);
  const rampSeconds = Math.min(RAMP_SECONDS, seconds / 3);
  const cruising = seconds > 0 ? metres / (seconds - rampSeconds) : 0;
  const gait: Gait = cruising > RUN_ABOVE_METRES_PER_SECOND ? 'run' : 'walk';
  return {
    metres,
    seconds,
    rampSeconds,
    gait,
    strideMetres: 2 * STEP_SHARE[gait] * stature,
    headingDegrees: metres > NOWHERE_METRES ? (atan2(dx, -dz) * 180) / Math.PI : null,
    stridesBefore,
  };
}

function buildTrack(performer: Performer, plan: Plan): Track {
  const beatTime = new Map(plan.beats.map((beat) => [beat.id, beat.atSeconds]));
  const timed = performer.marks
    .flatMap((mark) => {
      const seconds = beatTime.get(mark.beat);
      return seconds === undefined ? [] : [{ mark, seconds }];
    })
    .sort((a, b) => a.seconds - b.seconds);
  const stays = timed.map(({ mark, seconds }, k): Stay => {
    const next = timed[k + 1];
    let until = seconds + mark.holdSeconds;
    if (next) {
      const metres = hypot(next.mark.at[0] - mark.at[0], next.mark.at[1] - mark.at[1]);
      until = Math.max(seconds, Math.min(until, next.seconds - metres / FASTEST_METRES_PER_SECOND));
    }
    return {
      mark,
      at: [mark.at[0], mark.floorMetres ?? 0, mark.at[1]],
      headingDegrees: mark.headingDegrees,
      stance: mark.stance,
      fromSeconds: seconds,
      untilSeconds: until,
    };
  });
  const walks: Walk[] = [];
  let strides = 0;
  for (let k = 0; k + 1 < stays.length; k += 1) {
    const walk = walkBetween(stays[k], stays[k + 1], performer.statureMetres, strides);
    strides += walk.metres / walk.strideMetres;
    walks.push(walk);
  }
  return { stays, walks };
}

const tracks = new WeakMap<Performer, { readonly beats: Plan['beats']; readonly track: Track }>();

/** The performer's track through the plan's beats, kept while both records stay the same. */
export function trackOf(performer: Performer, plan: Plan): Track {
  const known = tracks.get(performer);
  if (known && known.beats === plan.beats) return known.track;
  const track = buildTrack(performer, plan);
  tracks.set(performer, { beats: plan.beats, track });
  return track;
}
