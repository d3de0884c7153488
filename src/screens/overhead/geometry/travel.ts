import { spanOf, stateAt } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { distance, headingOf, minus, type Spot } from './spots';

/** A moment on a camera's way, and which way it goes there. */
interface Tick {
  readonly spot: Spot;
  readonly headingDegrees: number;
}

/** A camera's way over the deck. */
export interface Travel {
  readonly spots: readonly Spot[];
  /** At every whole second of its span, where it moves. */
  readonly ticks: readonly Tick[];
  readonly end: Spot;
  readonly headingDegrees: number;
}

/** The way is looked up so often, seconds; and no oftener than so many times in all. */
const STEP_SECONDS = 0.125;
const MOST_STEPS = 400;
/** Less than this is no way, metres. */
const LEAST_METRES = 0.05;

/** The way that a setup's camera takes over its span as it is seen from above; null for one that stays where it is. */
export function travelOf(plan: Plan, setup: Setup): Travel | null {
  if (setup.move.keys.length < 2) return null;
  const [from, to] = spanOf(plan, setup);
  const spotAt = (seconds: number): Spot => {
    const { position } = stateAt(plan, setup, seconds);
    return [position[0], position[2]];
  };
  const steps = Math.min(MOST_STEPS, Math.max(1, Math.ceil((to - from) / STEP_SECONDS)));
  const moments = [
    ...Array.from({ length: steps + 1 }, (_, k) => from + ((to - from) * k) / steps),
    ...keysOf(plan, setup).flatMap(({ atSeconds }) =>
      atSeconds > from && atSeconds < to ? [atSeconds] : [],
    ),
  ].toSorted((a, b) => a - b);
  const spots = moments.map(spotAt);
  const end = spots[spots.length - 1];
  const before = spots.findLast((spot) => distance(spot, end) > LEAST_METRES);
  if (!before) return null;
  const ticks: Tick[] = [];
  const every = Math.max(1, Math.ceil((to - from) / 60));
  for (let seconds = Math.floor(from) + 1; seconds < to; seconds += every) {
    const [earlier, later] = [spotAt(seconds - STEP_SECONDS / 2), spotAt(seconds + STEP_SECONDS / 2)];
    if (distance(earlier, later) < 0.002) continue;
    ticks.push({ spot: spotAt(seconds), headingDegrees: headingOf(minus(later, earlier)) });
  }
  return { spots, ticks, end, headingDegrees: headingOf(minus(end, before)) };
}
