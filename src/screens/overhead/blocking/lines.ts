import type { SetupContinuity } from '../../../core/continuity/continuity';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { segmentWithin } from '../geometry/clipping';
import { type Bounds, distance, minus, type Spot } from '../geometry/spots';

/** The ids of two performers. */
export type Pair = readonly [string, string];

/** The lines that are kept to, and the setups that stand on the wrong side of one. */
export interface Lines {
  readonly pairs: readonly Pair[];
  readonly over: ReadonlySet<string>;
}

/** What the lettering of the blocking is made from, beside the plan as it is seen. */
export interface BlockingLettering {
  readonly lines: Lines;
  /** The master and the setup that is cheated for; null where the master is seen. */
  readonly cheating: { readonly master: Plan; readonly setup: Setup } | null;
}

export const keyOfPair = ([one, other]: Pair): string => `line:${one}:${other}`;

/** The plan's own lines, or those that were found in one that names none; and who stands over one. */
export function linesOnRoof(plan: Plan, found: readonly SetupContinuity[] | null): Lines {
  const findings = (found ?? []).flatMap(({ findings: each }) =>
    each.flatMap((finding) => (finding.kind === 'line' ? [finding] : [])),
  );
  const pairs = new Map<string, Pair>();
  for (const pair of plan.lines?.map((line) => line.pair) ?? findings.map((finding) => finding.pair)) {
    const key = keyOfPair(pair);
    const isThere = pair.every((id) => plan.cast.some((each) => each.id === id && !each.hidden));
    if (isThere && !pairs.has(key)) pairs.set(key, pair);
  }
  const over = findings.filter(({ what, pair }) => what === 'over' && pairs.has(keyOfPair(pair)));
  return { pairs: [...pairs.values()], over: new Set(over.map(({ setupId }) => setupId)) };
}

/** Two who stand nearer to each other than this make no line, metres. */
const TOGETHER_METRES = 0.15;

/** Where two performers are at an instant; null where one is nowhere, or both are in one place. */
export function endsOfPair(plan: Plan, pair: Pair, seconds: number): readonly [Spot, Spot] | null {
  const [one, other] = pair.map((id): Spot | null => {
    const performer = plan.cast.find((each) => each.id === id);
    const place = performer ? whereabouts(performer, plan, seconds) : null;
    return place ? [place.at[0], place.at[2]] : null;
  });
  return one && other && distance(one, other) >= TOGETHER_METRES ? [one, other] : null;
}

/** Long enough to leave any roof, metres. */
const FAR = 1000;

/** The straight line through two places as far as it lies within a rectangle; null where it does not. */
export function throughBoth(
  [one, other]: readonly [Spot, Spot],
  within: Bounds,
): readonly [Spot, Spot] | null {
  const [x, z] = minus(other, one);
  const size = Math.hypot(x, z) || 1;
  const at = (metres: number): Spot => [one[0] + (x / size) * metres, one[1] + (z / size) * metres];
  return segmentWithin(at(-FAR), at(FAR), within);
}
