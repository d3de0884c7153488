import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

/** Gives an item another name; its id stays, so nothing that refers to it breaks. */
export function renameItem(plan: Plan, { id, label }: { readonly id: string; readonly label: string }): Plan {
  const named = <Entry extends { readonly label: string }>(entry: Entry): Entry =>
    entry.label === label ? entry : { ...entry, label };
  return editRecord(plan, id, { piece: named, cast: named, gear: named });
}
