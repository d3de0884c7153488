import type { Plan } from '../schema/plan';
import type { CameraKey } from '../schema/setup';
import { keyAlong, type Track, trackPointAt } from '../trackLine';
import { changed } from './motion';
import { tidyCoordinate, tidyMetres } from './tidy';

/** A key so far along a track, metres, its place on the track's line; the same key where it is there. */
export function keyOn(track: Track, key: CameraKey, alongMetres: number): CameraKey {
  const along = tidyMetres(alongMetres);
  const { at } = trackPointAt(track, along);
  const position: CameraKey['position'] = [tidyCoordinate(at[0]), key.position[1], tidyCoordinate(at[2])];
  const isThere =
    key.alongMetres === along && key.position.every((metres, axis) => metres === position[axis]);
  return isThere ? key : { ...key, alongMetres: along, position };
}

const trackIn = (plan: Plan, id: string): Track | null => {
  const found = plan.gear.find((gear) => gear.id === id);
  return found?.kind === 'track' ? found : null;
};

/**
 * After tracks were moved, turned, mirrored, bent or made longer: the keys of the setups that ride on them stand as
 * far along as before, and their written places are on the track's line again. Heights and pans stay as written.
 * The same plan where no track with a camera on it changed.
 */
export function keysAlong(before: Plan, after: Plan): Plan {
  if (before.gear === after.gear) return after;
  const setups = changed(after.setups, (setup) => {
    if (setup.track === undefined) return setup;
    const [was, is] = [trackIn(before, setup.track), trackIn(after, setup.track)];
    if (!was || !is || was === is) return setup;
    const keys = changed(setup.move.keys, (key) => keyOn(is, key, keyAlong(was, key)));
    return keys === setup.move.keys ? setup : { ...setup, move: { ...setup.move, keys } };
  });
  return setups === after.setups ? after : { ...after, setups };
}
