import type { Remote } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { GroundApi, GroundWork } from './groundApi';

/** The worker of clear and useful ground. */
export class GroundWorker {
  readonly #asked = new AskedWorker<GroundApi>(
    () => new Worker(new URL('./ground.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf('The clear ground') },
  );

  /** Asks about a plan. */
  about<Value>(plan: Plan, ask: (api: Remote<GroundApi>) => Promise<Value>): Promise<Value> {
    return this.#asked.about(plan, ask);
  }

  giveUp(what: GroundWork): void {
    this.#asked.tell((api) => api.giveUp(what));
  }
}
