import { itemOf } from '../items';
import type { Plan } from '../schema/plan';
import type { Shown } from '../schema/texts';
import type { Common } from './editCommon';
import { changed } from './motion';

/** An item of which nothing is accepted: what a copy in another plan is. The same item where nothing was. */
export function unaccepted<Entry extends Common>(entry: Entry): Entry {
  if (entry.shows === undefined) return entry;
  const { shows: _, ...rest } = entry;
  return rest as Entry;
}

/** An item with other accepted findings; without the field where there are none. */
export function withShows<Entry extends Common>(entry: Entry, shows: Shown[]): Entry {
  return shows.length === 0 ? unaccepted(entry) : { ...entry, shows };
}

/** An item without what is accepted of it in one setup; the same item where nothing was. */
export function takenBack<Entry extends Common>(entry: Entry, setupId: string): Entry {
  const shows = entry.shows?.filter(({ setup }) => setup !== setupId);
  return shows === undefined || shows.length === entry.shows?.length ? entry : withShows(entry, shows);
}

/** A plan in which nothing is accepted in a setup; the same lists where nothing was. */
export function withoutShows(plan: Plan, setupId: string): Plan {
  const pieces = changed(plan.pieces, (entry) => takenBack(entry, setupId));
  const cast = changed(plan.cast, (entry) => takenBack(entry, setupId));
  const gear = changed(plan.gear, (entry) => takenBack(entry, setupId));
  return { ...plan, pieces, cast, gear };
}

/** Why an item may be seen in a setup; null where that was not accepted. */
export const reasonToShow = (plan: Plan, id: string, setupId: string): string | null =>
  itemOf(plan, id)?.record.shows?.find(({ setup }) => setup === setupId)?.reason ?? null;
