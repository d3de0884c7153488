import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { expandGroup } from '../../../core/plan/edits/expandGroup';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { onlyInSetup, seenOf } from '../../../desk/blocking/onlyIn';
import { markNow } from '../../../desk/blocking/tape';
import { chooseSetup } from '../../../desk/choose';
import { sessionStore } from '../../../desk/sessionStore';
import { roomOf, roundUnder } from '../grounds';
import type { Hit, Target } from './targets';

/** What is larger than this is chosen first and moved then, so that a drag of the building turns the view; metres. */
const HANDY_METRES = 1.3;
/** What the building is made of stays where it is under a hand. */
const FIXED: ReadonlySet<string> = new Set(['deck', 'parapet', 'skyline block']);

/** Whether a press has it among what is chosen. */
export function isChosen(target: Target, cameraId: string | null): boolean {
  if (target.type === 'camera') return target.setupId === cameraId;
  // A mark belongs to its performer.
  const id = target.type === 'mark' ? target.performerId : target.id;
  return sessionStore.getState().selectedIds.includes(id);
}

/** Chooses what was pressed, with all of its group; `adding` puts it to what is chosen, or takes it out. */
export function choose(plan: Plan, target: Target, adding: boolean): void {
  const { selectedIds, setSelectedId, setSelectedIds } = sessionStore.getState();
  if (target.type === 'camera') {
    setSelectedId(null);
    chooseSetup(target.setupId);
    return;
  }
  const id = target.type === 'mark' ? target.performerId : target.id;
  const group = expandGroup(plan, [id]);
  if (!adding) setSelectedIds([...group.filter((each) => each !== id), id]);
  else if (selectedIds.includes(id)) setSelectedIds(selectedIds.filter((each) => !group.includes(each)));
  else setSelectedIds([...selectedIds.filter((each) => !group.includes(each)), ...group]);
}

/** Ids of all that moves with an item: what is chosen where it is, else its group. */
export function movingWith(plan: Plan, id: string): readonly string[] {
  const { selectedIds } = sessionStore.getState();
  return expandGroup(plan, selectedIds.includes(id) ? selectedIds : [id]);
}

/** Whether a hand can move it: not what is locked, nor what the building is made of. */
export function isMovable(plan: Plan, target: Target): boolean {
  if (target.type === 'camera') return true;
  const id = target.type === 'mark' ? target.performerId : target.id;
  const record = itemOf(plan, id)?.record;
  if (!record || record.locked) return false;
  const carrier = carrierOf(plan, id);
  if (carrier !== null && itemOf(plan, carrier)?.record.locked) return false;
  return !('kind' in record && FIXED.has(record.kind));
}

/** Whether a drag may move it without its having been chosen first. */
export function isHandy(plan: Plan, target: Target, seconds: number): boolean {
  if (target.type !== 'item') return true;
  const item = itemOf(plan, target.id);
  if (item?.section !== 'piece') return true;
  const room = roomOf(plan, target.id, seconds);
  return room !== null && roundUnder(room, 0).radiusMetres <= HANDY_METRES;
}

/** Whoever is pressed while marks are cheated for one setup is taken by the mark that they are at, or were at last. */
export function markMeant(hit: Hit, plan: Plan, seconds: number): Hit {
  const { target } = hit;
  const seen = seenOf(plan);
  const performer =
    target.type === 'item' && onlyInSetup(plan) ? seen.cast.find(({ id }) => id === target.id) : undefined;
  const mark = performer ? markNow(seen, performer, seconds) : null;
  return performer && mark
    ? { ...hit, target: { type: 'mark', performerId: performer.id, markId: mark.id } }
    : hit;
}
