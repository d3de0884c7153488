import { spanOf } from '../../core/optics/camera';
import { keysOf } from '../../core/optics/cameraKey';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { sessionStore } from '../sessionStore';
import { blockingStore } from './blockingStore';
import { secondsOfBeat } from './things';

/** From the first beat to the last, seconds; nothing long in a plan without beats. */
export function actionSpan({ beats }: Pick<Plan, 'beats'>): readonly [number, number] {
  if (beats.length === 0) return [0, 0];
  const moments = beats.map(({ atSeconds }) => atSeconds);
  return [Math.min(...moments), Math.max(...moments)];
}

/** A plan's clock ends here, seconds. */
const LAST_SECONDS = 3600;
/** An action that is only begun is drawn as long, seconds. */
const SHORTEST_SECONDS = 8;
/** Beyond the last moment there is room for another beat: at least so much, and this share of the action. */
const BEYOND = { seconds: 2, share: 0.06 };

/** How far the clock is drawn, and may go, while the blocking is looked at: somewhat beyond the last beat and key. */
export function drawnUntil(plan: Plan): number {
  const keys = plan.setups.flatMap((setup) => keysOf(plan, setup).map(({ atSeconds }) => atSeconds));
  const last = Math.max(0, ...plan.beats.map(({ atSeconds }) => atSeconds), ...keys);
  const until = Math.ceil(last + Math.max(BEYOND.seconds, last * BEYOND.share));
  return Math.min(LAST_SECONDS, Math.max(SHORTEST_SECONDS, until));
}

const isBlocking = (): boolean => sessionStore.getState().sheet === 'blocking';

/** Where the clock may go: over all that is drawn while the blocking is looked at, else through a setup's span. */
export function clockSpan(plan: Plan, setup: Setup | null): readonly [number, number] {
  return setup && !isBlocking() ? spanOf(plan, setup) : [0, drawnUntil(plan)];
}

/** Over what the clock runs when it plays. */
export function loopSpan(plan: Plan, setup: Setup | null): readonly [number, number] {
  if (!isBlocking()) return clockSpan(plan, setup);
  const { loop } = blockingStore.getState();
  if (loop.type === 'setup' && setup) return spanOf(plan, setup);
  if (loop.type === 'beats') {
    const ends = [secondsOfBeat(plan, loop.from), secondsOfBeat(plan, loop.to)];
    const [from, to] = [Math.min(...ends), Math.max(...ends)];
    if (to > from) return [from, to];
  }
  return actionSpan(plan);
}
