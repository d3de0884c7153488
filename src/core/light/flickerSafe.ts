import { sin } from '../units/steadyMath';
import { stopsBetween } from './exposure';

/** What the mains swing with: their light comes and goes twice as often. */
export type MainsHertz = 50 | 60;

/** A shutter: how many pictures a second, and for how many degrees of each it is open. */
export interface Shutter {
  readonly framesPerSecond: number;
  readonly shutterDegrees: number;
}

/** Brightest picture to darkest that nobody sees yet. Source: [just-noticeable] */
export const JUST_NOTICEABLE_RATIO = 1.05;

/** How near to a whole number of pulses counts as whole, pulses. */
const WHOLE = 1e-6;
const isWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < WHOLE;

/** How many pulses of a mains lamp fall into one exposure: t · 2 Hz, t = angle ÷ 360 ÷ fps. */
export const pulsesInExposure = ({ framesPerSecond, shutterDegrees }: Shutter, hertz: MainsHertz): number =>
  (shutterDegrees / 360 / framesPerSecond) * 2 * hertz;

/**
 * Shutter angles up to 360° that take in whole pulses, so that every picture gets as much light as the next, narrowest
 * first: angle = 360 · fps · n ÷ (2 · Hz). None above twice the mains frequency.
 *
 * Source: [flicker-safe-angles]
 */
export function safeAngles(framesPerSecond: number, hertz: MainsHertz): readonly number[] {
  const most = Math.floor((2 * hertz) / framesPerSecond + WHOLE);
  return Array.from({ length: most }, (_, k) =>
    Math.min(360, (360 * framesPerSecond * (k + 1)) / (2 * hertz)),
  );
}

/**
 * Frame rates at which any shutter is safe, since every picture begins at the same moment of a pulse: 2 · Hz ÷ n, down
 * to `slowest`, fastest first. They hold as far as the mains and the camera keep time with each other, and a sensor
 * that is read line by line still shows bands that stand.
 *
 * Source: [flicker-safe-rates]
 */
export function safeRates(hertz: MainsHertz, slowest = 1): readonly number[] {
  const most = Math.floor((2 * hertz) / slowest + WHOLE);
  return Array.from({ length: most }, (_, k) => (2 * hertz) / (k + 1));
}

/**
 * Stops between the brightest and the darkest picture under a mains lamp, at worst: its light taken as
 * 1 + depth · cos(2π · 2 Hz · t), of which an exposure of n pulses leaves the share |sin πn ÷ πn|. 0 where it is safe.
 * @param depth how far the lamp's light swings about its mean, 0..1; 1 for one that goes out between pulses
 */
export function flickerStops(shutter: Shutter, hertz: MainsHertz, depth = 1): number {
  if (isWhole((2 * hertz) / shutter.framesPerSecond)) return 0;
  const pulses = pulsesInExposure(shutter, hertz);
  if (isWhole(pulses)) return 0;
  const left = depth * Math.abs(sin(Math.PI * pulses) / (Math.PI * pulses));
  return stopsBetween(1 - left, 1 + left);
}

/** Whether a shutter is safe under a mains frequency, and the nearest that is. */
export interface FlickerSafety {
  readonly hertz: MainsHertz;
  /** By whole pulses in each exposure; by a frame rate in step with the pulses alone; or not. */
  readonly safeBy: 'angle' | 'rate' | null;
  /** See `flickerStops`, for a lamp that goes out between pulses. */
  readonly stops: number;
  /** Whether that is more than is just noticed. */
  readonly shows: boolean;
  readonly safeAngles: readonly number[];
  /** The safe angle that is nearest; null where the frame rate leaves none. */
  readonly nearestAngle: number | null;
  /** At the same angle, the frame rate nearest to this one that takes in whole pulses. */
  readonly nearestRate: number;
}

const nearest = (values: readonly number[], to: number): number | null =>
  values.reduce<number | null>(
    (best, value) => (best === null || Math.abs(value - to) < Math.abs(best - to) ? value : best),
    null,
  );

/** The frame rate nearest to a shutter's own at which its angle takes in whole pulses: fps = angle · 2 Hz ÷ (360 n). */
function nearestRate({ framesPerSecond, shutterDegrees }: Shutter, hertz: MainsHertz): number {
  const one = (shutterDegrees / 360) * 2 * hertz;
  const pulses = Math.max(1, one / framesPerSecond);
  return nearest([one / Math.floor(pulses), one / Math.ceil(pulses)], framesPerSecond) ?? one;
}

/** What a shutter does under lamps on mains of a frequency. */
export function flickerSafety(shutter: Shutter, hertz: MainsHertz): FlickerSafety {
  const angles = safeAngles(shutter.framesPerSecond, hertz);
  const stops = flickerStops(shutter, hertz);
  return {
    hertz,
    safeBy: isWhole(pulsesInExposure(shutter, hertz))
      ? 'angle'
      : isWhole((2 * hertz) / shutter.framesPerSecond)
        ? 'rate'
        : null,
    stops,
    shows: stops > stopsBetween(1, JUST_NOTICEABLE_RATIO),
    safeAngles: angles,
    nearestAngle: nearest(angles, shutter.shutterDegrees),
    nearestRate: nearestRate(shutter, hertz),
  };
}
