import { proxy, type Remote, wrap } from 'comlink';
import { modelHeld } from '../core/form/models/modelShelf';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import type { LensTrial } from '../core/report/lensTest';
import type { Notice, SetupReport } from '../core/report/types';
import { modelFilesIn } from './assets/assetsIn';
import { withoutSkins } from './assets/withoutSkins';
import { packPlan } from './planWire';
import type { ContinuityAnswer, ReportApi } from './workers/reportApi';

/** One worker that reads plans: it is sent only what changed since the plan that it holds. */
export class ReportWorker {
  readonly #api: Remote<ReportApi>;
  #held: Plan | null = null;
  /** The imported models that it has. */
  readonly #models = new Set<string>();

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

  /** Tries a lens in one way on a setup, which need not be in the plan; null when it was given up. `tell` hears the done share. */
  async tryLens(
    plan: Plan,
    setup: Setup,
    tryId: string,
    atSeconds: number | null,
    tell: (share: number) => void,
  ): Promise<LensTrial | null> {
    await this.#hold(plan);
    return this.#api.tryLens(setup, tryId, atSeconds, proxy(tell));
  }

  /** How a plan's setups cut together; null when it was given up. */
  async continuity(plan: Plan): Promise<ContinuityAnswer | null> {
    await this.#hold(plan);
    return this.#api.continuity();
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
    await this.#holdModels(plan);
    if (this.#held === plan) return;
    const packed = packPlan(this.#held, plan);
    // Messages arrive in their order, so what is sent next may already count on this one.
    this.#held = plan;
    await this.#api.hold(packed);
  }

  /** A model goes over once; what a lens needs of it is copied, the page keeps drawing its own. */
  async #holdModels(plan: Plan): Promise<void> {
    for (const { sha256 } of modelFilesIn(plan)) {
      const model = this.#models.has(sha256) ? null : modelHeld(sha256);
      if (!model) continue;
      this.#models.add(sha256);
      await this.#api.holdModel(sha256, withoutSkins(model));
    }
  }
}
