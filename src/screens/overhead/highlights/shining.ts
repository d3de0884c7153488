import { type StreakOutline, streakOutlines } from '../../../core/light/streakOutline';
import { HIGHLIGHT_STEP_SECONDS, type LampHighlight } from '../../../core/light/wetFloor';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { formatSigned } from '../../../core/units/numbers';

/** Highlights are told every so often: half of that beside, they hold. */
const BESIDE_SECONDS = HIGHLIGHT_STEP_SECONDS / 2;
/** More outlines would be a pattern of their own; the sheet lists them all. */
const MOST_LAMPS = 6;
/** Of a string those bulbs that lie apart enough to be told from each other are still these many. */
const MOST_BULBS = 12;

/** A lamp whose highlight is in frame, with the outlines of its streaks as they lie now. */
export interface Shining {
  readonly lampId: string;
  readonly label: string;
  /** Over middle grey, at its brightest. */
  readonly stops: number;
  readonly streaks: readonly StreakOutline[];
}

/** What shines in the floor at an instant, seconds, brightest first: known from the report, laid by the lens and the lamps as they are. */
export function shiningAt(
  plan: Plan,
  setup: Setup,
  seconds: number,
  highlights: readonly LampHighlight[],
): readonly Shining[] {
  return highlights
    .filter(({ spans }) =>
      spans.some(([from, to]) => seconds >= from - BESIDE_SECONDS && seconds <= to + BESIDE_SECONDS),
    )
    .slice(0, MOST_LAMPS)
    .flatMap(({ lampId, brightest }): Shining[] => {
      const gear = plan.gear.find(({ id }) => id === lampId);
      const streaks = streakOutlines(plan, setup, seconds, brightest).slice(0, MOST_BULBS);
      return gear && streaks.length > 0
        ? [{ lampId, label: gear.label, stops: brightest.stops, streaks }]
        : [];
    });
}

/** `Head 3 in the floor, +3.4`: stops from middle grey. */
export const shiningWords = ({ label, stops }: Shining): string =>
  `${label} in the floor, ${formatSigned(stops, 1)}`;
