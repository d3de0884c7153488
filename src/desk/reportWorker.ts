import { proxy } from 'comlink';
import type { DirtyAsked, MadeDirty } from '../core/continuity/makeDirty';
import type { Refused } from '../core/light/advice';
import type { HighlightAdvice } from '../core/light/aimForHighlight';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import type { LensTrial } from '../core/report/lensTest';
import type { SetupLight } from '../core/report/light/types';
import type { Notice, SetupReport } from '../core/report/types';
import type { ToldFault } from './blocking/toldFaults';
import { AskedWorker, type Listening } from './workers/askedWorker';
import { PlanLine } from './workers/planLine';
import type { ContinuityAnswer, InstantLight, KeyWays, ReportApi } from './workers/reportApi';

/** One worker that reads plans: it is sent only what changed since the plan that it holds. */
export class ReportWorker {
  readonly #asked: AskedWorker<ReportApi>;

  /** @param onSilence told when it has not been heard of for long while somebody waits, and when it speaks again, with another try */
  constructor(onSilence: Listening<ReportApi>['tell']) {
    this.#asked = new AskedWorker<ReportApi>(
      () => new Worker(new URL('./workers/report.worker.ts', import.meta.url), { type: 'module' }),
      ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
      { isThere: (api) => api.isThere(), tell: onSilence },
    );
    this.#asked.begin();
  }

  /** Reads one setup of a plan over its whole span, or at one instant, seconds; null when it was given up. */
  read(plan: Plan, setupId: string, atSeconds: number | null): Promise<SetupReport | null> {
    return this.#asked.about(plan, (api) => api.read(setupId, atSeconds));
  }

  /** Tries a lens in one way on a setup, which need not be in the plan; null when it was given up. `tell` hears the done share. */
  tryLens(
    plan: Plan,
    setup: Setup,
    tryId: string,
    atSeconds: number | null,
    tell: (share: number) => void,
  ): Promise<LensTrial | null> {
    return this.#asked.about(plan, (api) => api.tryLens(setup, tryId, atSeconds, proxy(tell)));
  }

  /** How a plan's setups cut together; null when it was given up. */
  continuity(plan: Plan): Promise<ContinuityAnswer | null> {
    return this.#asked.about(plan, (api) => api.continuity());
  }

  /** See `ReportApi`; null when it was given up. */
  darken(plan: Plan, seen: SetupReport): Promise<SetupReport | null> {
    return this.#asked.about(plan, (api) => api.darken(seen));
  }

  /** See `ReportApi`; null when it was given up. */
  light(plan: Plan, ...asked: Parameters<ReportApi['light']>): Promise<SetupLight | null> {
    return this.#asked.about(plan, (api) => api.light(...asked));
  }

  /** What falls on each face at an instant, seconds, through a setup or, for null, on the roof. */
  lightNow(plan: Plan, setupId: string | null, seconds: number): Promise<InstantLight | null> {
    return this.#asked.about(plan, (api) => api.lightNow(setupId, seconds));
  }

  /** See `ReportApi`. */
  keyWays(plan: Plan, ...asked: Parameters<ReportApi['keyWays']>): Promise<KeyWays | Refused> {
    return this.#asked.about<KeyWays | Refused>(plan, (api) => api.keyWays(...asked));
  }

  /** See `ReportApi`. */
  highlightAtFeet(
    plan: Plan,
    ...asked: Parameters<ReportApi['highlightAtFeet']>
  ): Promise<HighlightAdvice | Refused> {
    return this.#asked.about<HighlightAdvice | Refused>(plan, (api) => api.highlightAtFeet(...asked));
  }

  /** The camera from which somebody near takes a share of a setup's frame; null for none, and when it was given up. */
  makeDirty(
    plan: Plan,
    setupId: string,
    asked: DirtyAsked,
    tell: (share: number) => void,
  ): Promise<MadeDirty | null> {
    return this.#asked.about(plan, (api) => api.makeDirty(setupId, asked, proxy(tell)));
  }

  blockingFaults(plan: Plan): Promise<readonly ToldFault[]> {
    return this.#asked.about(plan, (api) => api.blockingFaults());
  }

  notices(plan: Plan): Promise<readonly Notice[]> {
    return this.#asked.about(plan, (api) => api.notices());
  }

  /** Gives up what is being worked out, but for what an instant shows. */
  giveUp(): void {
    this.#asked.tell((api) => api.giveUp());
  }

  /** Ends what it does and all that it was asked, which fails with `WorkerEnded`; the next question starts another. */
  startAnew(): void {
    this.#asked.startAnew();
  }

  /** Ends the worker: what is still waited for is never answered. */
  end(): void {
    this.#asked.end();
  }
}
