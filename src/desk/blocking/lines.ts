import type { SetupContinuity } from '../../core/continuity/continuity';
import { whereabouts } from '../../core/form/figure/whereabouts';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';

/** The ids of two performers. */
export type Pair = readonly [string, string];

/** The lines that are kept to, and the setups that stand on the wrong side of one. */
export interface Lines {
  readonly pairs: readonly Pair[];
  readonly over: ReadonlySet<string>;
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
  return one && other && Math.hypot(one[0] - other[0], one[1] - other[1]) >= TOGETHER_METRES
    ? [one, other]
    : null;
}
