import { moveArea } from '../../core/plan/edits/moveArea';
import { moveItems } from '../../core/plan/edits/moveItems';
import { nameOfArea } from '../../core/plan/wetness';
import { onlyInSetup } from '../../desk/blocking/onlyIn';
import { chosenAreaIn } from '../../desk/chosenArea';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { movableOf } from '../../desk/selecting';
import { sessionStore } from '../../desk/sessionStore';
import { calledOf, change } from '../actions/doing';
import { ARROWS } from '../overhead/geometry/arrows';
import { nameInText } from '../overhead/words';

/** Metres for one press. */
const STEP = 0.1;
const LONG_STEP = 1;
const SHORT_STEP = 0.01;

/** For the key sheet. */
export const NUDGE_KEYS = [
  { keys: ['Arrows'], word: 'nudge what is chosen 0.10\u00a0m' },
  { keys: ['Shift Arrows'], word: 'nudge it 1\u00a0m' },
  { keys: ['Alt Arrows'], word: 'nudge it 0.01\u00a0m' },
] as const;

/** Moves the chosen wet area, one edit for each press. Says whether there is one. */
function nudgeArea([right, down]: readonly [number, number], step: number): boolean {
  const id = chosenAreaIn(livePlan());
  if (id === null || liveStore.getState().gesture) return false;
  const name = nameInText(nameOfArea(livePlan().ground, id));
  return change(`move ${name}`, (plan) => moveArea(plan, { id, by: [right * step, down * step] }));
}

/** From the first press until the keys come up, presses held down are one edit: what moves, and how far it has come. */
let nudging: { readonly ids: readonly string[]; by: [number, number] } | null = null;

/** Moves what is chosen along the plan's axes. Says whether the key was meant for it. */
export function nudge(event: KeyboardEvent): boolean {
  const direction = ARROWS[event.key];
  const { selectedIds, selectedId } = sessionStore.getState();
  if (!direction || event.ctrlKey || event.metaKey) return false;
  const step = event.shiftKey ? LONG_STEP : event.altKey ? SHORT_STEP : STEP;
  if (selectedId === null) return nudgeArea(direction, step);
  const live = liveStore.getState();
  if (!nudging) {
    const ids = movableOf(livePlan(), selectedIds);
    // While marks are cheated for a setup the master's stay: those have keys of their own on the drawing.
    const { cast } = livePlan();
    const isCast = ids.some((id) => cast.some((performer) => performer.id === id));
    if (ids.length === 0 || live.gesture || (isCast && onlyInSetup(livePlan()))) return false;
    live.beginGesture(selectedId);
    nudging = { ids, by: [0, 0] };
  }
  const { ids, by } = nudging;
  nudging.by = [by[0] + direction[0] * step, by[1] + direction[1] * step];
  // From where it began: what stands on something lands once, where it is now.
  live.moveGesture(moveItems(planStore.getState().plan, { ids, by: nudging.by }));
  return true;
}

/** Commits what the held keys moved, as one edit. */
export function endNudge(): void {
  if (!nudging) return;
  const { ids } = nudging;
  nudging = null;
  const { gesture, commitGesture } = liveStore.getState();
  if (gesture) commitGesture(`move ${calledOf(gesture.draft, ids)}`);
}
