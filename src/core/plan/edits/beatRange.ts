import type { Plan } from '../schema/plan';
import { kept, tidyMetres } from './tidy';

/** A plan's clock ends here. */
const LATEST_SECONDS = 3600;
/** Camera keys keep at least so far apart, seconds. */
const KEYS_APART_SECONDS = 0.001;

/** Earliest and latest, seconds on the action's clock. */
export type SecondsRange = readonly [earliest: number, latest: number];

/** One moment that has to come before another, each moved along or not. */
interface Order {
  readonly first: number;
  readonly second: number;
  readonly apart: number;
  readonly firstMoves: boolean;
  readonly secondMoves: boolean;
}

/** All that has to stay in order: where spans end after they start, and one camera key after another. */
function ordersOf(plan: Plan, moves: (beat: string | undefined) => boolean): readonly Order[] {
  const moments = new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds]));
  const momentOf = (beat: string | undefined): number => (beat === undefined ? 0 : (moments.get(beat) ?? 0));
  return plan.setups.flatMap(({ span, move: { keys } }): Order[] => [
    {
      first: momentOf(span.from),
      second: momentOf(span.to),
      apart: 0,
      firstMoves: moves(span.from),
      secondMoves: moves(span.to),
    },
    ...keys.slice(1).map((key, k): Order => {
      const before = keys[k];
      return {
        first: momentOf(before.beat) + before.atSeconds,
        second: momentOf(key.beat) + key.atSeconds,
        apart: KEYS_APART_SECONDS,
        firstMoves: moves(before.beat),
        secondMoves: moves(key.beat),
      };
    }),
  ]);
}

/** The beats that go along when one is moved: itself, and with `ripple` all that are not before it. */
export function beatsAlong(plan: Plan, beatId: string, ripple: boolean): ReadonlySet<string> {
  const from = plan.beats.find(({ id }) => id === beatId)?.atSeconds;
  if (from === undefined) return new Set();
  return new Set(
    plan.beats
      .filter(({ id, atSeconds }) => id === beatId || (ripple && atSeconds >= from))
      .map(({ id }) => id),
  );
}

/**
 * From when to when a beat may be put, so that no setup's span ends before it starts and all camera keys stay in their
 * order, a thousandth of a second apart; with `ripple` the beats after it go along. Where it is always lies within.
 * Null for a beat that the plan does not have.
 */
export function beatRange(
  plan: Plan,
  { beatId, ripple = false }: { readonly beatId: string; readonly ripple?: boolean },
): SecondsRange | null {
  const beat = plan.beats.find(({ id }) => id === beatId);
  if (!beat) return null;
  const along = beatsAlong(plan, beatId, ripple);
  let [back, on] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  for (const { id, atSeconds } of plan.beats) {
    if (!along.has(id)) continue;
    back = Math.max(back, -atSeconds);
    on = Math.min(on, LATEST_SECONDS - atSeconds);
  }
  const moves = (id: string | undefined): boolean => id !== undefined && along.has(id);
  for (const { first, second, apart, firstMoves, secondMoves } of ordersOf(plan, moves)) {
    const room = Math.max(0, second - first - apart);
    if (firstMoves && !secondMoves) on = Math.min(on, room);
    if (secondMoves && !firstMoves) back = Math.max(back, -room);
  }
  const at = beat.atSeconds;
  return [tidyMetres(at + Math.min(back, 0)), tidyMetres(at + Math.max(on, 0))];
}

/** The moment within a range that is nearest to a wanted one, to a millionth of a second. */
export const nearestWithin = ([earliest, latest]: SecondsRange, seconds: number): number =>
  kept(tidyMetres(seconds), earliest, latest);
