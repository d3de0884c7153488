import type { Way } from '../schema/cast';
import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { changeMark } from './changeMark';
import { tidySpot } from './tidy';
import { markBefore } from './timedMarks';

/** Which way. */
export interface WayTo {
  readonly performerId: string;
  /** The mark that the way leads to. */
  readonly markId: string;
}

/** The way to a mark changed, given where it comes from and leads to; the first mark has none, and is left alone. */
export function changedWay(
  plan: Plan,
  { performerId, markId }: WayTo,
  change: (through: readonly Spot[], line: Way['line'], from: Spot, to: Spot) => Way | null,
): Plan {
  const performer = plan.cast.find(({ id }) => id === performerId);
  const mark = performer?.marks.find(({ id }) => id === markId);
  const before = performer && markBefore(plan, performer, markId);
  if (!mark || !before) return plan;
  const way = change(mark.way?.through ?? [], mark.way?.line ?? 'straight', before.at, mark.at);
  return changeMark(plan, { performerId, markId, patch: { way: way ?? undefined } });
}

/** A way through places; null, which is straight, through none. */
export const wayOf = (through: readonly Spot[], line: Way['line']): Way | null =>
  through.length === 0 ? null : { through: through.map(tidySpot), line };
