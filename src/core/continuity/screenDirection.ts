import { scale, subtract, type Vec3 } from '../form/build/vector';
import { type WalkReading, walksOf } from '../form/figure/walks';
import { type Whereabouts, whereabouts } from '../form/figure/whereabouts';
import type { Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import { atan2 } from '../units/steadyMath';
import { inOneGo } from '../units/steps';
import { ByInstant } from './byInstant';
import { isFramed, runsIn, type Shot, shotsOf, signedDegrees } from './continuityShots';
import { type ScreenDirection, type ScreenMotion, screenMotion } from './screenDirectionAt';
import { stepsOver } from './stepsOver';
import type { ContinuityBase } from './types';

/** Which way a performer goes in a setup that sees them walk. */
export interface ScreenDirectionFinding extends ContinuityBase<'screen direction'> {
  /** The marks that the journey leads from and to. */
  readonly fromMark: string;
  readonly toMark: string;
  /** The way that they go longest while the setup sees them. */
  readonly direction: ScreenDirection;
  /** When the setup sees them go which way, seconds. */
  readonly runs: readonly {
    readonly direction: ScreenDirection;
    readonly fromSeconds: number;
    readonly untilSeconds: number;
  }[];
  /** The way that they go in the setup that it is held against; null where it stands alone. */
  readonly againstDirection: ScreenDirection | null;
  /** The setup between the two that sees them come straight on or go straight away, by the plan's order; null for none. */
  readonly neutralId: string | null;
}

/** A way shorter than this, some two steps, has no screen direction, metres. Source: common practice, no source */
const LEAST_METRES = 1;
/** A rest shorter than this on the way does not end a journey, seconds. Source: common practice, no source */
const REST_SECONDS = 2;
/** Nor does a turn of less than this, degrees. Source: common practice, no source */
const TURN_DEGREES = 90;
/** Speed is measured over this long, seconds. */
const STEP_SECONDS = 1 / 24;

/** Walks that follow on each other closely enough to be one way. */
interface Journey {
  readonly walks: readonly WalkReading[];
}

const bearingOf = ([x0, z0]: readonly number[], [x1, z1]: readonly number[]): number =>
  (atan2(x1 - x0, z0 - z1) * 180) / Math.PI;

/** Whether a walk goes on where another ended: soon, and not back. */
function goesOn(before: WalkReading, after: WalkReading): boolean {
  const [end, start] = [before.path.slice(-2), after.path.slice(0, 2)];
  const turn = Math.abs(signedDegrees(bearingOf(start[0], start[1]) - bearingOf(end[0], end[1])));
  return after.leaveSeconds - before.arriveSeconds < REST_SECONDS && turn < TURN_DEGREES;
}

function journeysOf(performer: Performer, plan: Plan): readonly Journey[] {
  const journeys: WalkReading[][] = [];
  for (const walk of walksOf(performer, plan)) {
    const last = journeys[journeys.length - 1];
    if (last && goesOn(last[last.length - 1], walk)) last.push(walk);
    else journeys.push([walk]);
  }
  return journeys
    .filter((walks) => walks.reduce((sum, { metres }) => sum + metres, 0) >= LEAST_METRES)
    .map((walks) => ({ walks }));
}

/** A setup's sight of a journey. */
interface Sighting {
  readonly shot: Shot;
  /** Which way, at the places among the shot's instants at which they are seen to go. */
  readonly motions: ReadonlyMap<number, ScreenMotion>;
}

type Places = ByInstant<Whereabouts | null>;

/** How fast and which way somebody goes at an instant, metres a second. */
function velocityAt(places: Places, performer: Performer, scene: Plan, seconds: number): Vec3 | null {
  const [before, after] = [-0.5, 0.5].map((share) =>
    places.at(performer, scene, seconds + share * STEP_SECONDS),
  );
  return before && after ? scale(subtract(after.at, before.at), 1 / STEP_SECONDS) : null;
}

function sightingOf(shot: Shot, performerId: string, journey: Journey, places: Places): Sighting | null {
  const performer = shot.scene.cast.find(({ id }) => id === performerId);
  if (!performer) return null;
  const motions = new Map<number, ScreenMotion>();
  shot.instants.forEach((seconds, k) => {
    const isOnTheWay = journey.walks.some(
      ({ leaveSeconds, arriveSeconds }) => seconds > leaveSeconds && seconds < arriveSeconds,
    );
    const place = shot.seen.get(performerId)?.[k]?.place;
    if (!isOnTheWay || !place || !isFramed(shot, performerId, k)) return;
    const velocity = velocityAt(places, performer, shot.scene, seconds);
    const motion = velocity && screenMotion(shot.cameras[k].pose, place.eyes, velocity);
    if (motion) motions.set(k, motion);
  });
  return motions.size > 0 ? { shot, motions } : null;
}

const isAcross = (direction: ScreenDirection): boolean =>
  direction === 'left to right' || direction === 'right to left';

/** The direction that most of the looks have; the first of those that have as many. */
function longestOf(motions: readonly ScreenMotion[]): ScreenDirection {
  const counts = new Map<ScreenDirection, number>();
  for (const { direction } of motions) counts.set(direction, (counts.get(direction) ?? 0) + 1);
  return [...counts].reduce((best, each) => (each[1] > best[1] ? each : best))[0];
}

/** The directions across the frame of two sightings where they meet: at the looks nearest to each other on the clock. */
function meeting(a: Sighting, b: Sighting): readonly [ScreenDirection, ScreenDirection] | null {
  const across = ({ shot, motions }: Sighting) =>
    [...motions]
      .filter(([, { direction }]) => isAcross(direction))
      .map(([k, { direction }]) => ({ seconds: shot.instants[k], direction }));
  let best: { readonly apart: number; readonly ways: readonly [ScreenDirection, ScreenDirection] } | null =
    null;
  const others = across(b);
  for (const own of across(a)) {
    for (const other of others) {
      const apart = Math.abs(own.seconds - other.seconds);
      if (!best || apart < best.apart) best = { apart, ways: [own.direction, other.direction] };
    }
  }
  return best?.ways ?? null;
}

function runsOf({ shot, motions }: Sighting): ScreenDirectionFinding['runs'] {
  const places = [...motions.keys()];
  return runsIn(places).flatMap(([first, last]) => {
    const made: { direction: ScreenDirection; fromSeconds: number; untilSeconds: number }[] = [];
    for (let k = first; k <= last; k += 1) {
      const direction = motions.get(k)?.direction;
      const seconds = shot.instants[k];
      const open = made[made.length - 1];
      if (open && open.direction === direction) open.untilSeconds = seconds;
      else if (direction) made.push({ direction, fromSeconds: seconds, untilSeconds: seconds });
    }
    return made;
  });
}

/** When a setup sees somebody at their fastest across the frame; along the sight, in the middle. */
function bestSeconds({ shot, motions }: Sighting, direction: ScreenDirection): number {
  const own = [...motions].filter(([, motion]) => motion.direction === direction);
  const [k] = isAcross(direction)
    ? own.reduce((best, each) =>
        Math.abs(each[1].acrossMetresPerSecond) > Math.abs(best[1].acrossMetresPerSecond) ? each : best,
      )
    : own[Math.floor((own.length - 1) / 2)];
  return shot.instants[k];
}

function findingsOfJourney(
  performerId: string,
  journey: Journey,
  shots: readonly Shot[],
  places: Places,
): readonly ScreenDirectionFinding[] {
  let held: Sighting | null = null;
  let neutralId: string | null = null;
  const findings: ScreenDirectionFinding[] = [];
  for (const shot of shots) {
    const sighting = sightingOf(shot, performerId, journey, places);
    if (!sighting) continue;
    const direction = longestOf([...sighting.motions.values()]);
    const ways = held && meeting(sighting, held);
    const isReversed = ways !== null && ways[0] !== ways[1];
    const standing = !isReversed ? 'holds' : neutralId === null ? 'breaks' : 'said';
    findings.push({
      kind: 'screen direction',
      standing,
      setupId: shot.setup.id,
      againstId: ways && held ? held.shot.setup.id : null,
      performerIds: [performerId],
      atSeconds: bestSeconds(sighting, direction),
      fromMark: journey.walks[0].fromMark,
      toMark: journey.walks[journey.walks.length - 1].toMark,
      direction: ways ? ways[0] : direction,
      runs: runsOf(sighting),
      againstDirection: ways ? ways[1] : null,
      neutralId: isReversed ? neutralId : null,
    });
    if ([...sighting.motions.values()].some((motion) => isAcross(motion.direction))) {
      // After a neutral setup the new way holds; without one the audience still has the old one in mind.
      if (!isReversed || neutralId !== null) held = sighting;
      neutralId = null;
    } else if (held) neutralId = shot.setup.id;
  }
  return findings;
}

/**
 * Which way each performer goes across the frame in each setup that sees them walk, and whether that is the same from
 * setup to setup. Walks that follow on each other without a rest or a turn back are one journey, and all setups that
 * see some of it are compared in the plan's order, each with the last one before it that had a direction, at the
 * instants where the two come nearest to each other. Somebody who goes the other way then has been turned round by the
 * cut; where a setup between the two sees them come straight on or go straight away the change is explained, and said.
 * Setups that lie in the plan between the two and do not see the walk explain nothing.
 *
 * A way is judged by how it crosses the sight of the performer (see `screenMotion`), whatever a camera does to keep up.
 *
 * Source: [screen-direction], [neutral-shot]
 */
export const screenDirectionFindings = (plan: Plan): readonly ScreenDirectionFinding[] =>
  inOneGo(screenDirectionSteps(plan));

/** The same, journey by journey: yields the done share, 0..1. */
export const screenDirectionSteps = (
  plan: Plan,
): Generator<number, readonly ScreenDirectionFinding[], void> => {
  const shots = shotsOf(plan);
  const places: Places = new ByInstant(whereabouts);
  const journeys = plan.cast.flatMap((performer) =>
    journeysOf(performer, plan).map((journey) => ({ performer, journey })),
  );
  return stepsOver(journeys, ({ performer, journey }) =>
    findingsOfJourney(performer.id, journey, shots, places),
  );
};
