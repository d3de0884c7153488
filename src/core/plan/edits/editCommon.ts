import type { Plan } from '../schema/plan';
import type { Shown } from '../schema/texts';
import { changed } from './motion';

/** What every item has beside the fields of its kind. */
export interface Common {
  readonly id: string;
  readonly label: string;
  readonly group?: string | undefined;
  readonly locked?: boolean | undefined;
  readonly hidden?: boolean | undefined;
  readonly shows?: Shown[] | undefined;
}

/** Changes what items of any section have in common. Lists without a changed item stay the same lists. */
export function editCommon(
  plan: Plan,
  ids: Iterable<string>,
  change: <Entry extends Common>(entry: Entry) => Entry,
): Plan {
  const chosen = new Set(ids);
  const apply = <Entry extends Common>(entry: Entry): Entry => (chosen.has(entry.id) ? change(entry) : entry);
  const pieces = changed(plan.pieces, apply);
  const cast = changed(plan.cast, apply);
  const gear = changed(plan.gear, apply);
  return pieces === plan.pieces && cast === plan.cast && gear === plan.gear
    ? plan
    : { ...plan, pieces, cast, gear };
}

/** An entry with a mark set to true, or without it: what is not so is not said in the file. */
export function marked<Entry extends Common>(entry: Entry, mark: 'locked' | 'hidden', on: boolean): Entry {
  if ((entry[mark] === true) === on) return entry;
  if (on) return { ...entry, [mark]: true };
  const { [mark]: _, ...rest } = entry;
  return rest as Entry;
}
