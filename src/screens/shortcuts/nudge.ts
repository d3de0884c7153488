import { anchorOf } from '../../core/plan/edits/anchorOf';
import { moveItem } from '../../core/plan/edits/moveItem';
import { tidyMetres } from '../../core/plan/edits/tidy';
import { itemOf } from '../../core/plan/items';
import { livePlan, liveStore } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';

const DIRECTIONS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Metres for one press. */
const STEP = 0.1;
const LONG_STEP = 1;
const SHORT_STEP = 0.01;

/** For the key sheet. */
export const NUDGE_KEYS = [
  { keys: ['Arrows'], word: 'nudge the chosen item 0.10\u00a0m' },
  { keys: ['Shift Arrows'], word: 'nudge it 1\u00a0m' },
  { keys: ['Alt Arrows'], word: 'nudge it 0.01\u00a0m' },
] as const;

/** True from the first press until the keys come up: presses held down are one edit. */
let nudging = false;

/** Moves the chosen item along the plan's axes. Says whether the key was meant for it. */
export function nudge(event: KeyboardEvent): boolean {
  const direction = DIRECTIONS[event.key];
  const { selectedId } = sessionStore.getState();
  if (!direction || selectedId === null || event.ctrlKey || event.metaKey) return false;
  const plan = livePlan();
  const anchor = anchorOf(plan, selectedId);
  if (!anchor) return false;
  const live = liveStore.getState();
  if (!nudging && live.gesture) return false;
  if (!nudging) live.beginGesture(selectedId);
  nudging = true;
  const step = event.shiftKey ? LONG_STEP : event.altKey ? SHORT_STEP : STEP;
  const to: [number, number] = [
    tidyMetres(anchor[0] + direction[0] * step),
    tidyMetres(anchor[1] + direction[1] * step),
  ];
  live.moveGesture(moveItem(plan, { id: selectedId, to }));
  return true;
}

/** Commits what the held keys moved, as one edit. */
export function endNudge(): void {
  if (!nudging) return;
  nudging = false;
  const { gesture, commitGesture } = liveStore.getState();
  if (!gesture) return;
  commitGesture(`move ${itemOf(gesture.draft, gesture.itemId)?.record.label ?? 'it'}`);
}
