import { type Remote, wrap } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { PlanLine } from '../workers/planLine';
import type { LevelMapApi } from './levelMapApi';

/** The worker of the level maps. */
export class LevelMapWorker {
  readonly #api: Remote<LevelMapApi>;
  readonly #line: PlanLine;

  /** @param onTrouble told when the worker cannot be started, which no question would ever answer */
  constructor(onTrouble: (error: Error) => void) {
    const worker = new Worker(new URL('./levelMap.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', (event) =>
      onTrouble(new Error(event.message || 'the worker did not start')),
    );
    this.#api = wrap<LevelMapApi>(worker);
    this.#line = new PlanLine({ hold: this.#api.hold, holdModel: this.#api.holdModel });
  }

  /** Asks about a plan. */
  about<Value>(plan: Plan, ask: (api: Remote<LevelMapApi>) => Promise<Value>): Promise<Value> {
    return this.#line.about(plan, () => ask(this.#api));
  }

  giveUp(what: 'map' | 'frame'): void {
    void this.#api.giveUp(what);
  }
}
