import { cos, sin } from '../units/steadyMath';
import type { Gear } from './schema/gear';
import type { CameraKey } from './schema/setup';

/** Dolly track of a plan. */
export type Track = Extract<Gear, { kind: 'track' }>;

const RADIANS = Math.PI / 180;

/** A place on a track's middle line, and which way the line runs there. */
export interface TrackPoint {
  /** On the deck under the rails, metres. */
  readonly at: readonly [number, number, number];
  readonly headingDegrees: number;
}

/**
 * The place so many metres along a track's middle line from its rear end. A curved track runs on an arc of its radius
 * through its middle, `at`, where it has its heading. Beyond an end the end itself.
 */
export function trackPointAt(track: Track, alongMetres: number): TrackPoint {
  const fromMiddle = Math.min(track.lengthMetres, Math.max(0, alongMetres)) - track.lengthMetres / 2;
  const turn = track.bendMetres === undefined ? 0 : fromMiddle / track.bendMetres;
  const forward = track.bendMetres === undefined ? fromMiddle : track.bendMetres * sin(turn);
  const aside = track.bendMetres === undefined ? 0 : track.bendMetres * (1 - cos(turn));
  const [c, s] = [cos(track.headingDegrees * RADIANS), sin(track.headingDegrees * RADIANS)];
  return {
    at: [track.at[0] + s * forward + c * aside, track.at[1], track.at[2] - c * forward + s * aside],
    headingDegrees: track.headingDegrees + (turn * 180) / Math.PI,
  };
}

/** The track's middle line as places at most this far apart, from its rear end to its front end. */
export function trackMiddleLine(track: Track, atMostMetres = 0.25): readonly TrackPoint[] {
  const steps =
    track.bendMetres === undefined ? 1 : Math.max(1, Math.ceil(track.lengthMetres / atMostMetres));
  return Array.from({ length: steps + 1 }, (_, k) => trackPointAt(track, (track.lengthMetres * k) / steps));
}

/** How far along the track, from its rear end, the place nearest to [x, z] lies; metres. */
export function alongTrack(track: Track, [x, z]: readonly [number, number]): number {
  const gap = (along: number): number => {
    const { at } = trackPointAt(track, along);
    return (at[0] - x) * (at[0] - x) + (at[2] - z) * (at[2] - z);
  };
  const steps = Math.max(8, Math.ceil(track.lengthMetres / 0.25));
  let best = 0;
  for (let k = 1; k <= steps; k += 1)
    if (gap((track.lengthMetres * k) / steps) < gap((track.lengthMetres * best) / steps)) best = k;
  let [low, high] = [Math.max(0, best - 1), Math.min(steps, best + 1)].map(
    (k) => (track.lengthMetres * k) / steps,
  );
  for (let k = 0; k < 60; k += 1) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    if (gap(a) <= gap(b)) high = b;
    else low = a;
  }
  return (low + high) / 2;
}

/** How far along its track a key stands, metres: as it says, else where the track is nearest to its place. */
export const keyAlong = (track: Track, key: CameraKey): number =>
  key.alongMetres ?? alongTrack(track, [key.position[0], key.position[2]]);
