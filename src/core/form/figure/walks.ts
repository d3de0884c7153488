import type { Performer } from '../../plan/schema/cast';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Gait } from './pose/gait';
import { trackOf } from './track';

/** How a performer gets from one mark to the next. */
export interface WalkReading {
  readonly fromMark: string;
  readonly toMark: string;
  /** The way over the floor, [x, z] in metres, both marks included; a curve comes in short straight pieces. */
  readonly path: readonly Spot[];
  readonly metres: number;
  readonly leaveSeconds: number;
  readonly arriveSeconds: number;
  /** Between getting going and slowing down. */
  readonly cruisingMetresPerSecond: number;
  readonly gait: Gait;
  /** Whether this is faster than a person runs in a scene. */
  readonly tooFast: boolean;
}

/**
 * More than people run in a scene, in costume and from a standing start: trained boys under fourteen average 5.2 m/s
 * over ten metres from standing. The limit itself is common practice, no source.
 * Source: [sprint-speed]
 */
const TOO_FAST_METRES_PER_SECOND = 5;

const readings = new WeakMap<object, readonly WalkReading[]>();

/** A performer's walks in the order of the clock, one for each pair of successive marks that lie apart. */
export function walksOf(performer: Performer, plan: Plan): readonly WalkReading[] {
  const track = trackOf(performer, plan);
  const known = readings.get(track);
  if (known) return known;
  const found = track.walks.flatMap((walk, k): WalkReading[] => {
    if (!walk.goes) return [];
    const [from, to] = [track.stays[k], track.stays[k + 1]];
    return [
      {
        fromMark: from.mark.id,
        toMark: to.mark.id,
        path: walk.path.places,
        metres: walk.path.metres,
        leaveSeconds: from.untilSeconds,
        arriveSeconds: to.fromSeconds,
        cruisingMetresPerSecond: walk.cruisingMetresPerSecond,
        gait: walk.gait,
        // Where no time is left at all, nobody gets there.
        tooFast: walk.seconds === 0 || walk.cruisingMetresPerSecond > TOO_FAST_METRES_PER_SECOND,
      },
    ];
  });
  readings.set(track, found);
  return found;
}
