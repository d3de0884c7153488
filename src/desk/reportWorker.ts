import { proxy, type Remote, wrap } from 'comlink';
import type { DirtyAsked, MadeDirty } from '../core/continuity/makeDirty';
import type { Refused } from '../core/light/advice';
import type { HighlightAdvice } from '../core/light/aimForHighlight';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import type { LensTrial } from '../core/report/lensTest';
import type { SetupLight } from '../core/report/light/types';
import type { Notice, SetupReport } from '../core/report/types';
import { sendModels } from './assets/sendModels';
import type { ToldFault } from './blocking/toldFaults';
import { packPlan } from './planWire';
import type { ContinuityAnswer, InstantLight, KeyWays, ReportApi } from './workers/reportApi';

/** One worker that reads plans: it is sent only what changed since the plan that it holds. */
export class ReportWorker {
  readonly #worker: Worker;
  readonly #api: Remote<ReportApi>;
  #held: Plan | null = null;
  /** The imported models that it has. */
  readonly #models = new Set<string>();

  /** @param onTrouble told when the worker cannot be started, which no question would ever answer */
  constructor(onTrouble: (error: Error) => void) {
    this.#worker = new Worker(new URL('./workers/report.worker.ts', import.meta.url), { type: 'module' });
    this.#worker.addEventListener('error', (event) =>
      onTrouble(new Error(event.message || 'the worker did not start')),
    );
    this.#api = wrap<ReportApi>(this.#worker);
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

  /** See `ReportApi`; null when it was given up. */
  async darken(plan: Plan, seen: SetupReport): Promise<SetupReport | null> {
    await this.#hold(plan);
    return this.#api.darken(seen);
  }

  /** See `ReportApi`; null when it was given up. */
  async light(plan: Plan, ...asked: Parameters<ReportApi['light']>): Promise<SetupLight | null> {
    await this.#hold(plan);
    return this.#api.light(...asked);
  }

  /** What falls on each face at an instant, seconds, through a setup or, for null, on the roof. */
  async lightNow(plan: Plan, setupId: string | null, seconds: number): Promise<InstantLight | null> {
    await this.#hold(plan);
    return this.#api.lightNow(setupId, seconds);
  }

  /** See `ReportApi`. */
  async keyWays(plan: Plan, ...asked: Parameters<ReportApi['keyWays']>): Promise<KeyWays | Refused> {
    await this.#hold(plan);
    return this.#api.keyWays(...asked);
  }

  /** See `ReportApi`. */
  async highlightAtFeet(
    plan: Plan,
    ...asked: Parameters<ReportApi['highlightAtFeet']>
  ): Promise<HighlightAdvice | Refused> {
    await this.#hold(plan);
    return this.#api.highlightAtFeet(...asked);
  }

  /** The camera from which somebody near takes a share of a setup's frame; null for none, and when it was given up. */
  async makeDirty(
    plan: Plan,
    setupId: string,
    asked: DirtyAsked,
    tell: (share: number) => void,
  ): Promise<MadeDirty | null> {
    await this.#hold(plan);
    return this.#api.makeDirty(setupId, asked, proxy(tell));
  }

  async blockingFaults(plan: Plan): Promise<readonly ToldFault[]> {
    await this.#hold(plan);
    return this.#api.blockingFaults();
  }

  async notices(plan: Plan): Promise<readonly Notice[]> {
    await this.#hold(plan);
    return this.#api.notices();
  }

  /** Gives up what is being read. */
  giveUp(): void {
    void this.#api.giveUp();
  }

  /** Ends the worker: what is still waited for is never answered, and it is asked nothing more. */
  end(): void {
    this.#worker.terminate();
  }

  async #hold(plan: Plan): Promise<void> {
    await sendModels(plan, this.#models, this.#api.holdModel);
    if (this.#held === plan) return;
    const packed = packPlan(this.#held, plan);
    // Messages arrive in their order, so what is sent next may already count on this one.
    this.#held = plan;
    await this.#api.hold(packed);
  }
}
