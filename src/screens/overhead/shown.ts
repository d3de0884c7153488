import { type Item, itemsOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';

/** What the roof's drawing shows: all but what is hidden while somebody works on what lies under it. */
export const shownItems = (plan: Plan): readonly Item[] =>
  itemsOf(plan).filter(({ record }) => !record.hidden);

/** Those of a list that are not hidden. */
export const shown = <Entry extends { readonly hidden?: boolean | undefined }>(
  list: readonly Entry[],
): readonly Entry[] => list.filter(({ hidden }) => !hidden);
