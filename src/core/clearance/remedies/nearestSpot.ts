import type { Spot } from '../../plan/schema/numbers';
import { cos, sin } from '../../units/steadyMath';

/** Directions that are tried at first, evenly round. */
const DIRECTIONS = 24;
/** How far apart places along a direction are tried, metres; farther out, by how much of the way. */
const STEP_METRES = 0.1;
const WIDER = 1.12;
/** How exactly the nearest place along a direction is found, metres. */
const FINE_METRES = 0.005;
/** How often the best direction is refined, each time at half the angle. */
const REFINEMENTS = 6;

const RADIANS = Math.PI / 180;

/** A move over the deck, metres: [x, z]. */
const wayOf = (bearing: number, metres: number): Spot => [
  sin(bearing * RADIANS) * metres,
  -cos(bearing * RADIANS) * metres,
];

/**
 * How far one has to go along a bearing until a move holds, metres, looked for nearer than `within`; null for nowhere.
 * What holds at one place and not at one beyond it is found where it is at least a step wide.
 */
function along(bearing: number, within: number, holds: (by: Spot) => boolean): number | null {
  let before = 0;
  while (before < within) {
    const metres = Math.min(Math.max(before + STEP_METRES, before * WIDER), within);
    if (holds(wayOf(bearing, metres))) {
      let [low, high] = [before, metres];
      while (high - low > FINE_METRES) {
        const middle = (low + high) / 2;
        if (holds(wayOf(bearing, middle))) high = middle;
        else low = middle;
      }
      return high;
    }
    before = metres;
  }
  return null;
}

/**
 * The shortest move over the deck that holds, [x, z] in metres, no longer than `mostMetres`; null where none does.
 * Bearings that are likely (degrees, clockwise from −z) are tried first, then all round, each only as far as the best
 * so far; then the best bearing is refined. Within 5 cm of the shortest of a dense grid, wherever what holds is not
 * narrower than a step.
 */
export function nearestMove(
  holds: (by: Spot) => boolean,
  mostMetres: number,
  likely: readonly number[] = [],
): Spot | null {
  const round = Array.from({ length: DIRECTIONS }, (_, k) => (360 / DIRECTIONS) * k);
  let best: { readonly bearing: number; readonly metres: number } | null = null;
  const attempt = (bearing: number, isRefining = false): void => {
    const within = best ? best.metres - FINE_METRES : mostMetres;
    if (within <= 0 || (isRefining && !holds(wayOf(bearing, within)))) return;
    const metres = along(bearing, within, holds);
    if (metres !== null) best = { bearing, metres };
  };
  for (const bearing of [...likely, ...round]) attempt(bearing);
  let spread = 360 / DIRECTIONS / 2;
  for (let k = 0; k < REFINEMENTS; k += 1, spread /= 2) {
    const middle = (best as { readonly bearing: number } | null)?.bearing;
    if (middle === undefined) return null;
    attempt(middle - spread, true);
    attempt(middle + spread, true);
  }
  const found = best as { readonly bearing: number; readonly metres: number } | null;
  return found && wayOf(found.bearing, found.metres);
}

/**
 * The least change of one number that holds, outwards from nothing to both sides by steps, then halved down to `fine`;
 * null where none within [lowest, highest] does. The change is signed.
 */
export function leastChange(
  holds: (by: number) => boolean,
  { lowest, highest, step, fine }: Readonly<Record<'lowest' | 'highest' | 'step' | 'fine', number>>,
): number | null {
  const most = Math.max(-lowest, highest);
  for (let before = 0; before < most; ) {
    const next = Math.min(before + step, most);
    for (const sign of [1, -1]) {
      const end = Math.min(next, sign > 0 ? highest : -lowest);
      if (end <= before || !holds(sign * end)) continue;
      let [low, high] = [before, end];
      while (high - low > fine) {
        const middle = (low + high) / 2;
        if (holds(sign * middle)) high = middle;
        else low = middle;
      }
      return sign * high;
    }
    before = next;
  }
  return null;
}
