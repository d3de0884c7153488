import type { Mark, Performer, Stance } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import type { Vec3 } from '../build/vector';
import { type Gait, STEP_SHARE } from './pose/gait';
import { type Path, pathBetween } from './way/path';

/** A mark with the instants between which the performer stays there. */
export interface Stay {
  readonly mark: Mark;
  readonly at: Vec3;
  readonly stance: Stance;
  readonly fromSeconds: number;
  readonly untilSeconds: number;
}

/** The way from one stay to the next. */
export interface Walk {
  readonly path: Path;
  /** Whether it leads anywhere; else there is only a turn on the spot. */
  readonly goes: boolean;
  readonly seconds: number;
  readonly rampSeconds: number;
  readonly cruisingMetresPerSecond: number;
  readonly gait: Gait;
  readonly strideMetres: number;
  /** How far ahead and behind on the path a walker's heading looks. */
  readonly headingReachMetres: number;
}

/** A performer's marks in the order of their beats; `walks[k]` leads from `stays[k]` to `stays[k + 1]`. */
export interface Track {
  readonly stays: readonly Stay[];
  readonly walks: readonly Walk[];
}

/**
 * Faster than this a performer runs. People change over at about 2 m/s, and hurried adults walk up to 2.5 m/s.
 * Source: [walk-to-run], [walking-speed]
 */
const RUN_ABOVE_METRES_PER_SECOND = 2.2;
/** A hold is cut short where the next mark could else only be reached by a jump; common practice, no source. */
const FASTEST_METRES_PER_SECOND = 8;
/** Time that a hold leaves at least before the next mark, to turn and to change stance; common practice, no source. */
const CHANGE_SECONDS = 0.5;
/** Time to get going and to stop; common practice, no source. */
const RAMP_SECONDS = 0.4;
/** Time over which a walker turns into a corner, ahead of it and after it; common practice, no source. */
const CORNER_SECONDS = 0.28;
const SHORTEST_REACH_METRES = 0.3;

/** A way shorter than this is none: only a turn on the spot. */
const NOWHERE_METRES = 0.001;

function walkAlong(path: Path, seconds: number, stature: number): Walk {
  const { metres } = path;
  const rampSeconds = Math.min(RAMP_SECONDS, seconds / 3);
  const cruising = seconds > 0 ? metres / (seconds - rampSeconds) : 0;
  const gait: Gait = cruising > RUN_ABOVE_METRES_PER_SECOND ? 'run' : 'walk';
  return {
    path,
    goes: metres > NOWHERE_METRES,
    seconds,
    rampSeconds,
    cruisingMetresPerSecond: cruising,
    gait,
    strideMetres: 2 * STEP_SHARE[gait] * stature,
    headingReachMetres: Math.min(Math.max(SHORTEST_REACH_METRES, CORNER_SECONDS * cruising), metres / 2),
  };
}

function buildTrack(performer: Performer, plan: Pick<Plan, 'beats'>): Track {
  const beatTime = new Map(plan.beats.map((beat) => [beat.id, beat.atSeconds]));
  const timed = performer.marks
    .flatMap((mark) => {
      const seconds = beatTime.get(mark.beat);
      return seconds === undefined ? [] : [{ mark, seconds }];
    })
    .sort((a, b) => a.seconds - b.seconds);
  const paths = timed.slice(1).map(({ mark }, k) => pathBetween(timed[k].mark.at, mark));
  const stays = timed.map(({ mark, seconds }, k): Stay => {
    const next = timed[k + 1];
    let until = seconds + mark.holdSeconds;
    if (next) {
      const needed = Math.max(CHANGE_SECONDS, paths[k].metres / FASTEST_METRES_PER_SECOND);
      until = Math.max(seconds, Math.min(until, next.seconds - needed));
    }
    return {
      mark,
      at: [mark.at[0], mark.floorMetres ?? 0, mark.at[1]],
      stance: mark.stance,
      fromSeconds: seconds,
      untilSeconds: until,
    };
  });
  const walks = paths.map((path, k) =>
    walkAlong(path, Math.max(0, stays[k + 1].fromSeconds - stays[k].untilSeconds), performer.statureMetres),
  );
  return { stays, walks };
}

const tracks = new WeakMap<Performer, { readonly beats: Plan['beats']; readonly track: Track }>();

/** The performer's track through the plan's beats, kept while both records stay the same. */
export function trackOf(performer: Performer, plan: Pick<Plan, 'beats'>): Track {
  const known = tracks.get(performer);
  if (known && known.beats === plan.beats) return known.track;
  const track = buildTrack(performer, plan);
  tracks.set(performer, { beats: plan.beats, track });
  return track;
}
