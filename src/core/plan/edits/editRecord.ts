import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';

/** What to do with a record of each section; a section that is left out stays as it is. */
export interface RecordEdits {
  readonly piece?: (piece: Piece) => Piece;
  readonly cast?: (performer: Performer) => Performer;
  readonly gear?: (gear: Gear) => Gear;
}

/** The list with one record changed; the same list when nothing changed, so that what depends on it may stay. */
function changeOne<Entry extends { readonly id: string }>(
  list: Entry[],
  id: string,
  change: ((entry: Entry) => Entry) | undefined,
): Entry[] {
  if (!change) return list;
  const index = list.findIndex((entry) => entry.id === id);
  const before = list[index];
  if (!before) return list;
  const after = change(before);
  return after === before ? list : list.with(index, after);
}

/** Changes the item of that id. All other records stay the same objects; an unknown id changes nothing. */
export function editRecord(plan: Plan, id: string, edits: RecordEdits): Plan {
  const pieces = changeOne(plan.pieces, id, edits.piece);
  const cast = changeOne(plan.cast, id, edits.cast);
  const gear = changeOne(plan.gear, id, edits.gear);
  if (pieces === plan.pieces && cast === plan.cast && gear === plan.gear) return plan;
  return { ...plan, pieces, cast, gear };
}

/** Changes the setup of that id; an unknown id changes nothing. */
export function editSetup(plan: Plan, setupId: string, change: (setup: Setup) => Setup): Plan {
  const setups = changeOne(plan.setups, setupId, change);
  return setups === plan.setups ? plan : { ...plan, setups };
}
