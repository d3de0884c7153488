import { itemOf } from '../core/plan/items';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { setupLetter } from '../core/plan/setupLetter';
import { clockSpan } from './blocking/clock';
import { FRAME_SECONDS } from './blocking/snapTime';
import { livePlan, liveStore } from './liveStore';
import { planStore } from './planStore';
import { sessionStore } from './sessionStore';

/** The setup of that id, else the first; null in a plan without setups. */
export function setupOf(plan: Plan, setupId: string | null): Setup | null {
  return plan.setups.find((setup) => setup.id === setupId) ?? plan.setups[0] ?? null;
}

/** A setup's letter: A to Z by its place in the plan, then AA, AB, … */
export function letterOf(plan: Plan, setupId: string): string {
  return setupLetter(
    Math.max(
      plan.setups.findIndex((setup) => setup.id === setupId),
      0,
    ),
  );
}

/** Sets the action's clock within the chosen setup's span, or within all of the action while its blocking is looked at. */
export function goToSeconds(seconds: number): void {
  const plan = livePlan();
  const [from, to] = clockSpan(plan, setupOf(plan, sessionStore.getState().setupId));
  liveStore.getState().setSeconds(Math.min(Math.max(seconds, from), to));
}

export { FRAME_SECONDS };

/** Steps the clock so many frames, and stops what plays. */
export function stepFrames(by: number): void {
  const { seconds, setPlaying } = liveStore.getState();
  setPlaying(false);
  // From frame to frame, wherever between two of them the play was stopped.
  goToSeconds((Math.round(seconds / FRAME_SECONDS) + by) * FRAME_SECONDS);
}

/** Looks through another setup; the clock comes into its span. */
export function chooseSetup(setupId: string): void {
  sessionStore.getState().setSetupId(setupId);
  goToSeconds(liveStore.getState().seconds);
}

/** Chooses the setup so many places on in the plan's order, round the ends. */
export function stepSetup(by: number): void {
  const { setups } = livePlan();
  const { setupId } = sessionStore.getState();
  const place = setups.findIndex((setup) => setup.id === setupId);
  const next = setups[(Math.max(place, 0) + by + setups.length) % setups.length];
  if (next) chooseSetup(next.id);
}

/** Keeps what is chosen within the plan: a setup or item that is gone is no longer chosen. */
export function keepChoicesInPlan(): void {
  const check = (plan: Plan): void => {
    const { setupId, selectedIds, setSetupId, setSelectedIds } = sessionStore.getState();
    const setup = setupOf(plan, setupId);
    if ((setup?.id ?? null) !== setupId) setSetupId(setup?.id ?? null);
    const there = selectedIds.filter((id) => itemOf(plan, id) !== null);
    if (there.length < selectedIds.length) setSelectedIds(there);
    goToSeconds(liveStore.getState().seconds);
  };
  planStore.subscribe((state, before) => {
    if (state.plan !== before.plan) check(state.plan);
  });
  sessionStore.subscribe((state, before) => {
    if (state.sheet !== before.sheet) goToSeconds(liveStore.getState().seconds);
  });
  check(planStore.getState().plan);
}
