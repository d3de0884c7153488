import type { Caution } from '../../core/cautions/types';
import type { Plan } from '../../core/plan/schema/plan';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { CautionsApi } from './cautionsApi';

/** The worker that looks for cautions. */
export class CautionsWorker {
  readonly #asked = new AskedWorker<CautionsApi>(
    () => new Worker(new URL('./cautions.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf('The search for cautions') },
  );

  /** All cautions of a plan. */
  of(plan: Plan): Promise<readonly Caution[]> {
    return this.#asked.about(plan, (api) => api.cautions());
  }
}
