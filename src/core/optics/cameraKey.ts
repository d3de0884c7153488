import type { Vec3 } from '../form/build/vector';
import { whereabouts } from '../form/figure/whereabouts';
import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { keyAlong, type Track, trackPointAt } from '../plan/trackLine';
import { momentOf } from './moments';
import { panTiltToHold } from './operator';
import { along, keyAt, type Stretch, stretchAt } from './pose';
import type { FrameShape } from './types';

/** Where a camera is and how it looks at an instant. */
export interface CameraState {
  /** Entrance pupil, metres. */
  readonly position: Vec3;
  readonly headingDegrees: number;
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
  /** Of the lens, or as far as a zoom is in. */
  readonly focalMm: number;
}

/** The keys of a move on the action's clock: those that hang on a beat at its time. The setup's own where none does. */
export function keysOf(plan: Pick<Plan, 'beats'>, setup: Setup): readonly CameraKey[] {
  const { keys } = setup.move;
  if (keys.every(({ beat }) => beat === undefined)) return keys;
  return keys.map(({ beat, ...key }) => ({
    ...key,
    atSeconds: momentOf(plan, { atSeconds: key.atSeconds, beat }),
  }));
}

/** The track that a setup's dolly runs on; null where it has none. */
export function trackOf(plan: Pick<Plan, 'gear'>, setup: Setup): Track | null {
  if (setup.track === undefined) return null;
  const found = plan.gear.find(({ id }) => id === setup.track);
  return found?.kind === 'track' ? found : null;
}

/** How far along its track a setup's dolly is at an instant, metres; null where it has no track. */
export function alongAt(plan: Pick<Plan, 'beats' | 'gear'>, setup: Setup, seconds: number): number | null {
  const track = trackOf(plan, setup);
  if (!track) return null;
  const stretch = stretchAt(keysOf(plan, setup), setup.move.ease, seconds);
  return along(stretch, keyAlong(track, stretch.from), keyAlong(track, stretch.to));
}

function focalOf(lens: Lens, stretch: Stretch): number {
  if (lens.longestMm === undefined) return lens.focalMm;
  const asked = along(stretch, stretch.from.focalMm ?? lens.focalMm, stretch.to.focalMm ?? lens.focalMm);
  return Math.min(lens.longestMm, Math.max(lens.focalMm, asked));
}

/**
 * A setup's camera at an instant of the action's clock, on its steady way: between its keys, on its track where it has
 * one, and panned and tilted for whom the operator holds. `frameAt` gives the delivered frame for a focal length.
 */
export function cameraStateAt(
  plan: Plan,
  setup: Setup,
  seconds: number,
  lens: Lens,
  frameAt: (focalMm: number) => FrameShape,
): CameraState {
  const keys = keysOf(plan, setup);
  const { ease } = setup.move;
  const stretch = stretchAt(keys, ease, seconds);
  const key = keyAt({ ease, keys }, seconds);
  const track = trackOf(plan, setup);
  const focalMm = focalOf(lens, stretch);
  let position: Vec3 = key.position;
  if (track) {
    const { at } = trackPointAt(track, alongAt(plan, setup, seconds) ?? 0);
    position = [at[0], key.position[1], at[2]];
  }
  const { operator } = setup;
  const held = operator && plan.cast.find(({ id }) => id === operator.hold);
  const place = held && whereabouts(held, plan, seconds);
  const { headingDegrees, tiltDegrees } =
    operator && place
      ? panTiltToHold(position, place.eyes, operator.at, key.rollDegrees, frameAt(focalMm))
      : key;
  return { position, headingDegrees, tiltDegrees, rollDegrees: key.rollDegrees, focalMm };
}
