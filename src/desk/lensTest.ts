import { modelsAtHand } from '../core/form/models/modelShelf';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import type { LensTrial } from '../core/report/lensTest';
import { type LensQuestion, LensTester } from './lensTester';
import { ReportWorker } from './reportWorker';
import { silenceOf } from './workers/silence';

let tester: LensTester | null = null;

/** The test has a worker of its own, started when it is first asked: the night and the instant are not held up. */
function testing(): LensTester {
  tester ??= new LensTester(new ReportWorker(silenceOf('The lens test')), modelsAtHand);
  return tester;
}

/** Tries every lens of the kit on a setup; lensTestStore tells how far it is. */
export const askLensTest = (question: LensQuestion): void => testing().ask(question);

export const stopLensTest = (): void => testing().stop();

export const goOnWithLensTest = (question: LensQuestion): void => testing().goOn(question);

/** What a setup as it would be sees over its whole move; null once nobody waits for it any more. */
export const tryMoved = (plan: Plan, setup: Setup, signal: AbortSignal): Promise<LensTrial | null> =>
  testing().single(plan, setup, signal);
