import { spanOf } from '../../core/optics/camera';
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

const isBlocking = (): boolean => sessionStore.getState().sheet === 'blocking';

/** Where the clock may go: over all of the action while the blocking is looked at, else through a setup's span. */
export function clockSpan(plan: Plan, setup: Setup | null): readonly [number, number] {
  return setup && !isBlocking() ? spanOf(plan, setup) : [0, actionSpan(plan)[1]];
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
