import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { PlanLine } from '../workers/planLine';
import type { NightApi } from './nightApi';

/** A worker that works out nights. */
export class NightWorker {
  readonly #worker: Worker;
  readonly #api: Remote<NightApi>;
  readonly #line: PlanLine;

  /** @param onTrouble told when the worker cannot be started, which no question would ever answer */
  constructor(onTrouble: (error: Error) => void) {
    this.#worker = new Worker(new URL('./night.worker.ts', import.meta.url), { type: 'module' });
    this.#worker.addEventListener('error', (event) =>
      onTrouble(new Error(event.message || 'the worker did not start')),
    );
    this.#api = wrap<NightApi>(this.#worker);
    this.#line = new PlanLine({ hold: this.#api.hold, holdModel: this.#api.holdModel });
  }

  /** Asks about a plan. */
  about<Value>(plan: Plan, ask: (api: Remote<NightApi>) => Promise<Value>): Promise<Value> {
    return this.#line.about(plan, () => ask(this.#api));
  }

  giveUpSuggesting(): void {
    void this.#api.giveUpSuggesting();
  }

  /** Ends it at once, whatever it does. */
  end(): void {
    this.#worker.terminate();
  }
}
