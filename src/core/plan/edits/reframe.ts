import { LARGEST_METRES, type Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';
import { keyOn } from './keysOnTrack';
import { setLens } from './setLens';
import { kept, tidyCoordinate, tidyMetres } from './tidy';

/** Another lens, and the way that the camera goes for it. */
export interface ReframeArgs {
  readonly setupId: string;
  readonly lens: string;
  /** The way of every key alike, metres. */
  readonly by: Point;
  /** On a track: how far along it each key stands then, metres; null off tracks. */
  readonly alongMetres: readonly number[] | null;
}

/**
 * Puts another lens on a setup and shifts every key of its move by the same way, on a track along it. A lens that the kit lacks changes
 * nothing; a key beyond the 5 km that a plan may hold stops there.
 */
export function reframe(plan: Plan, { setupId, lens, by, alongMetres }: ReframeArgs): Plan {
  if (!plan.kit.lenses.some(({ id }) => id === lens)) return plan;
  const shifted = editSetup(plan, setupId, (setup) => {
    const track = plan.gear.find(({ id }) => id === setup.track);
    const keys = setup.move.keys.map((key, k) => {
      const along = alongMetres?.[k];
      const position: Point = [
        tidyCoordinate(key.position[0] + by[0]),
        tidyCoordinate(key.position[1] + by[1]),
        tidyCoordinate(key.position[2] + by[2]),
      ];
      const stays =
        position.every((coordinate, axis) => coordinate === key.position[axis]) &&
        (along === undefined || along === key.alongMetres);
      if (stays) return key;
      if (along === undefined) return { ...key, position };
      const there = kept(tidyMetres(along), 0, LARGEST_METRES);
      return track?.kind === 'track'
        ? keyOn(track, { ...key, position }, there)
        : { ...key, position, alongMetres: there };
    });
    const isSame = keys.every((key, k) => key === setup.move.keys[k]);
    return isSame ? setup : { ...setup, move: { ...setup.move, keys } };
  });
  return setLens(shifted, { setupId, lens });
}
