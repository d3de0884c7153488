import type { Remote } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { NightApi } from './nightApi';

/** A worker that works out nights. */
export class NightWorker {
  readonly #asked: AskedWorker<NightApi>;

  /** @param what what it is asked for, as the start of a sentence: `The night` */
  constructor(what: string) {
    this.#asked = new AskedWorker<NightApi>(
      () => new Worker(new URL('./night.worker.ts', import.meta.url), { type: 'module' }),
      ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
      { isThere: (api) => api.isThere(), tell: silenceOf(what) },
    );
  }

  /** Asks about a plan. */
  about<Value>(plan: Plan, ask: (api: Remote<NightApi>) => Promise<Value>): Promise<Value> {
    return this.#asked.about(plan, ask);
  }

  giveUpSuggesting(): void {
    this.#asked.tell((api) => api.giveUpSuggesting());
  }

  /** Ends it at once, whatever it does. */
  end(): void {
    this.#asked.end();
  }
}
