import type { Sway } from '../plan/schema/setup';
import { sin } from '../units/steadyMath';

/** How a camera on a shoulder is off its steady place: metres along its own right, up and forward, and degrees. */
export interface Unrest {
  readonly metres: readonly [number, number, number];
  readonly headingDegrees: number;
  readonly tiltDegrees: number;
  readonly rollDegrees: number;
}

/** Breath and steps, in cycles a second, and how much of the whole each takes. Source: common practice, no source */
const WAVES: readonly (readonly [hertz: number, share: number])[] = [
  [0.31, 0.5],
  [0.73, 0.3],
  [1.87, 0.2],
];
/** A shoulder rolls less than it pans and tilts. Source: common practice, no source */
const ROLL_SHARE = 0.4;

/** A number in 0..1 out of a seed and a place, always the same. */
function drawn(seed: number, place: number): number {
  let hash = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) + Math.imul(place + 1, 0xc2b2ae35);
  hash = Math.imul(hash ^ (hash >>> 15), 0x2c1b3c6d);
  hash = Math.imul(hash ^ (hash >>> 12), 0x297a2d39);
  return ((hash ^ (hash >>> 15)) >>> 0) / 4294967296;
}

/** One channel of the drift, −1..1, smooth and the same for the same seed. */
function channel(seed: number, place: number, seconds: number): number {
  return WAVES.reduce((sum, [hertz, share], k) => {
    const phase = drawn(seed, place * 8 + k);
    const pace = hertz * (0.85 + 0.3 * drawn(seed, place * 8 + 4 + k));
    return sum + share * sin(2 * Math.PI * (pace * seconds + phase));
  }, 0);
}

/** The unrest at an instant: no channel ever exceeds what the sway says. */
export function swayAt(sway: Sway, seconds: number): Unrest {
  const at = (place: number): number => channel(sway.seed, place, seconds);
  return {
    metres: [at(0) * sway.metres, at(1) * sway.metres, at(2) * sway.metres],
    headingDegrees: at(3) * sway.degrees,
    tiltDegrees: at(4) * sway.degrees,
    rollDegrees: at(5) * sway.degrees * ROLL_SHARE,
  };
}

/**
 * By how much, at most, the sway brings something nearer to the frame line: metres square to the camera's axis, for a
 * thing `slantMetres` from the camera and a frame line at a tangent of `tanHalf`. The camera's shift and turn move a
 * point in the camera's own axes by no more than their sum; towards a plane through the eye that counts 1/cos as much
 * square to the axis.
 */
export function swayReach(sway: Sway, slantMetres: number, tanHalf: number): number {
  const turn = (sway.degrees * Math.sqrt(2 + ROLL_SHARE * ROLL_SHARE) * Math.PI) / 180;
  return (Math.sqrt(3) * sway.metres + turn * slantMetres) * Math.sqrt(1 + tanHalf * tanHalf);
}
