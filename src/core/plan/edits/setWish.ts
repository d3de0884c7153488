import type { Plan } from '../schema/plan';
import type { Wish } from '../schema/texts';
import { editRecord } from './editRecord';

/** Says what an item should do in frame. */
export function setWish(plan: Plan, { id, wish }: { readonly id: string; readonly wish: Wish }): Plan {
  const wished = <Entry extends { readonly wish?: Wish | undefined }>(entry: Entry): Entry =>
    entry.wish === wish ? entry : { ...entry, wish };
  return editRecord(plan, id, { piece: wished, cast: wished, gear: wished });
}
