import { type Remote, wrap } from 'comlink';
import type { Plan } from '../core/plan/schema/plan';
import type { Notice, SetupReport } from '../core/report/types';
import { packPlan } from './planWire';
import type { ReportApi } from './workers/reportApi';

/** One worker that reads plans: it is sent only what changed since the plan that it holds. */
export class ReportWorker {
  readonly #api: Remote<ReportApi>;
  #held: Plan | null = null;

  /** @param onTrouble told when the worker cannot be started, which no question would ever answer */
  constructor(onTrouble: (error: Error) => void) {
    const worker = new Worker(new URL('./workers/report.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', (event) =>
      onTrouble(new Error(event.message || 'the worker did not start')),
    );
    this.#api = wrap<ReportApi>(worker);
  }

  /** Reads one setup of a plan over its whole span, or at one instant, seconds; null when it was given up. */
  async read(plan: Plan, setupId: string, atSeconds: number | null): Promise<SetupReport | null> {
    await this.#hold(plan);
    return this.#api.read(setupId, atSeconds);
  }

  async notices(plan: Plan): Promise<readonly Notice[]> {
    await this.#hold(plan);
    return this.#api.notices();
  }

  /** Gives up what is being read. */
  giveUp(): void {
    void this.#api.giveUp();
  }

  async #hold(plan: Plan): Promise<void> {
    if (this.#held === plan) return;
    const packed = packPlan(this.#held, plan);
    // Messages arrive in their order, so what is sent next may already count on this one.
    this.#held = plan;
    await this.#api.hold(packed);
  }
}
