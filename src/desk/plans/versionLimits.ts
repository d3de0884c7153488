/** The key of a kept version: its plan, and when it was kept, milliseconds since 1970. */
export type VersionKey = readonly [planId: string, at: number];

/** Common practice, no source: enough for a week of changing one's mind, little beside a single picture library. */
export const MOST_OF_A_PLAN = 40;
export const MOST_IN_ALL = 400;

/**
 * The versions to give up: too many of a plan or too many in all, the oldest first. A plan's newest always stays. Age
 * alone gives nothing up: a clock that once stood wrong would take all the others with it.
 */
export function versionsToDrop(keys: readonly VersionKey[]): VersionKey[] {
  const newestFirst = [...keys].sort((one, other) => other[1] - one[1]);
  const counts = new Map<string, number>();
  let kept = 0;
  const dropped: VersionKey[] = [];
  for (const key of newestFirst) {
    const [planId] = key;
    const ofPlan = counts.get(planId) ?? 0;
    const isDue = ofPlan >= MOST_OF_A_PLAN || kept >= MOST_IN_ALL;
    if (isDue && ofPlan > 0) {
      dropped.push(key);
      continue;
    }
    counts.set(planId, ofPlan + 1);
    kept += 1;
  }
  return dropped;
}
