import { type Remote, wrap } from 'comlink';
import type { Caution } from '../../core/cautions/types';
import type { Plan } from '../../core/plan/schema/plan';
import { PlanLine } from '../workers/planLine';
import type { CautionsApi } from './cautionsApi';

/** The worker that looks for cautions. */
export class CautionsWorker {
  readonly #api: Remote<CautionsApi>;
  readonly #line: PlanLine;

  /** @param onTrouble told when the worker cannot be started, which no question would ever answer */
  constructor(onTrouble: (error: Error) => void) {
    const worker = new Worker(new URL('./cautions.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', (event) =>
      onTrouble(new Error(event.message || 'the worker did not start')),
    );
    this.#api = wrap<CautionsApi>(worker);
    this.#line = new PlanLine({ hold: this.#api.hold, holdModel: this.#api.holdModel });
  }

  /** All cautions of a plan. */
  of(plan: Plan): Promise<readonly Caution[]> {
    return this.#line.about(plan, () => this.#api.cautions());
  }
}
