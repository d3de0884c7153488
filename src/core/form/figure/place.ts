import { mix, type Vec3 } from '../build/vector';
import type { Track, Walk } from './track';
import { smooth } from './turning';
import { placeOn } from './way/path';

/** Time of a turn and of a change of stance on the spot, just before the next mark; common practice, no source. */
export const CHANGE_ON_THE_SPOT_SECONDS = 0.5;

/** Where a track has somebody at an instant. */
export interface Place {
  readonly at: Vec3;
  /** The stay that they are at or come from. */
  readonly stay: number;
  /** Seconds gone since they left it; null while they stay. */
  readonly gone: number | null;
  /** Metres gone on the way, and how fast; 0 while they stay. */
  readonly metres: number;
  readonly speedMetresPerSecond: number;
}

/** Metres gone and speed after `gone` seconds of a walk: even, with equal ramps at both ends. */
function progress(walk: Walk, gone: number): { readonly metres: number; readonly speed: number } {
  const { seconds, rampSeconds: ramp, cruisingMetresPerSecond: cruising } = walk;
  if (ramp > 0 && gone < ramp)
    return { metres: (cruising * gone * gone) / (2 * ramp), speed: (cruising * gone) / ramp };
  const left = seconds - gone;
  if (ramp > 0 && left < ramp) {
    return {
      metres: walk.path.metres - (cruising * left * left) / (2 * ramp),
      speed: (cruising * left) / ramp,
    };
  }
  return { metres: cruising * (gone - ramp / 2), speed: cruising };
}

/** How much of a change on the spot is done, 0 to 1. */
export function changedOnTheSpot(walk: Walk, gone: number, within = CHANGE_ON_THE_SPOT_SECONDS): number {
  return smooth(1 - (walk.seconds - gone) / Math.min(within, walk.seconds));
}

/** Where a track has its performer at an instant; null for a track without marks. */
export function placeAt({ stays, walks }: Track, seconds: number): Place | null {
  if (stays.length === 0) return null;
  // Of marks at the same instant the last one counts.
  let k = 0;
  while (k + 1 < stays.length && stays[k + 1].fromSeconds <= seconds) k += 1;
  const from = stays[k];
  if (k === walks.length || seconds <= from.untilSeconds) {
    return { at: from.at, stay: k, gone: null, metres: 0, speedMetresPerSecond: 0 };
  }
  const walk = walks[k];
  const gone = seconds - from.untilSeconds;
  const to = stays[k + 1];
  if (!walk.goes) {
    const at = mix(from.at, to.at, changedOnTheSpot(walk, gone));
    return { at, stay: k, gone, metres: 0, speedMetresPerSecond: 0 };
  }
  const { metres, speed } = progress(walk, gone);
  const [x, z] = placeOn(walk.path, metres);
  const floor = from.at[1] + (to.at[1] - from.at[1]) * Math.min(1, metres / walk.path.metres);
  return { at: [x, floor, z], stay: k, gone, metres, speedMetresPerSecond: speed };
}
