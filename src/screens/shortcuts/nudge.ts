import { moveArea } from '../../core/plan/edits/moveArea';
import { moveItems } from '../../core/plan/edits/moveItems';
import type { Plan } from '../../core/plan/schema/plan';
import { nameOfArea } from '../../core/plan/wetness';
import { onlyInSetup } from '../../desk/blocking/onlyIn';
import { chosenAreaIn } from '../../desk/chosenArea';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { movableOf } from '../../desk/selecting';
import { sessionStore } from '../../desk/sessionStore';
import { calledOf, change } from '../actions/doing';
import { ARROWS } from '../overhead/geometry/arrows';
import { anchorOfTarget, movedTo, moveName, type Target } from '../overhead/targets';
import { nameInText } from '../overhead/words';

/** Metres for one press. */
const STEP = 0.1;
const LONG_STEP = 1;
const SHORT_STEP = 0.01;

/** For the key sheet. */
export const NUDGE_KEYS = [
  { keys: ['Arrows'], word: 'nudge what is chosen, or the camera that has the focus, 0.10\u00a0m' },
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

/** What presses that are held down move, from the first until the keys come up: one edit. */
interface Nudging {
  /** The plan with it so far along the plan's axes from where it began, metres. */
  readonly movedBy: (plan: Plan, by: readonly [number, number]) => Plan;
  /** What the history calls it. */
  readonly name: (plan: Plan) => string;
  by: readonly [number, number];
}

let nudging: Nudging | null = null;

/** The camera that has the focus on the drawing; null for none. */
function cameraUnder(event: KeyboardEvent): Target | null {
  const marked = event.target instanceof Element ? event.target.closest('[data-target]') : null;
  const setupId = /^camera:(.+)$/.exec(marked?.getAttribute('data-target') ?? '')?.[1];
  return setupId === undefined ? null : { type: 'camera', setupId };
}

/** Takes the camera that has the focus, else what is chosen; null where nothing lets itself be moved. */
function taken(event: KeyboardEvent): Nudging | null {
  const camera = cameraUnder(event);
  if (camera)
    return {
      by: [0, 0],
      movedBy: (plan, by) => {
        const from = anchorOfTarget(plan, camera);
        return from ? movedTo(plan, camera, [from[0] + by[0], from[1] + by[1]]) : plan;
      },
      name: (plan) => moveName(plan, camera, []),
    };
  const plan = livePlan();
  const ids = movableOf(plan, sessionStore.getState().selectedIds);
  // While marks are cheated for a setup the master's stay: those have keys of their own on the drawing.
  const isCast = ids.some((id) => plan.cast.some((performer) => performer.id === id));
  if (ids.length === 0 || (isCast && onlyInSetup(plan))) return null;
  return {
    by: [0, 0],
    movedBy: (before, by) => moveItems(before, { ids, by: [by[0], by[1]] }),
    name: (after) => `move ${calledOf(after, ids)}`,
  };
}

/** Moves the camera that has the focus, or what is chosen, along the plan's axes. Says whether the key was meant for it. */
export function nudge(event: KeyboardEvent): boolean {
  const direction = ARROWS[event.key];
  const { selectedId } = sessionStore.getState();
  if (!direction || event.ctrlKey || event.metaKey) return false;
  const step = event.shiftKey ? LONG_STEP : event.altKey ? SHORT_STEP : STEP;
  if (selectedId === null && !cameraUnder(event)) return nudgeArea(direction, step);
  const live = liveStore.getState();
  if (!nudging) {
    nudging = live.gesture ? null : taken(event);
    if (!nudging) return false;
    live.beginGesture(selectedId ?? 'camera');
  }
  nudging.by = [nudging.by[0] + direction[0] * step, nudging.by[1] + direction[1] * step];
  // From where it began: what stands on something lands once, where it is now.
  live.moveGesture(nudging.movedBy(planStore.getState().plan, nudging.by));
  return true;
}

/** Commits what the held keys moved, as one edit. */
export function endNudge(): void {
  if (!nudging) return;
  const { name } = nudging;
  nudging = null;
  const { gesture, commitGesture } = liveStore.getState();
  if (gesture) commitGesture(name(gesture.draft));
}
