import type { Plan } from '../../core/plan/schema/plan';

/** More than this taken out at once, and what was there is kept as a version. */
const MOST_TAKEN_LIGHTLY = 1;

interface Named {
  readonly id: string;
}

function gone(before: readonly Named[], after: readonly Named[]): number {
  if (before === after) return 0;
  const left = new Set(after.map(({ id }) => id));
  return before.filter(({ id }) => !left.has(id)).length;
}

/**
 * Whether an edit took so much away that the state before it should be kept apart from the history, which lasts as
 * long as the page: a setup, two items or more, or the picture that the roof was drawn over.
 */
export function isDrastic(before: Plan, after: Plan): boolean {
  if (gone(before.setups, after.setups) > 0) return true;
  if (before.underlay && before.underlay.asset.sha256 !== after.underlay?.asset.sha256) return true;
  const items =
    gone(before.pieces, after.pieces) + gone(before.cast, after.cast) + gone(before.gear, after.gear);
  return items > MOST_TAKEN_LIGHTLY;
}
