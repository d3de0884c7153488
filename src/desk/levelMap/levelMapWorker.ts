import type { Remote } from 'comlink';
import type { Plan } from '../../core/plan/schema/plan';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { LevelMapApi } from './levelMapApi';

/** The worker of the level maps. */
export class LevelMapWorker {
  readonly #asked = new AskedWorker<LevelMapApi>(
    () => new Worker(new URL('./levelMap.worker.ts', import.meta.url), { type: 'module' }),
    ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
    { isThere: (api) => api.isThere(), tell: silenceOf('The map of levels') },
  );

  /** Asks about a plan. */
  about<Value>(plan: Plan, ask: (api: Remote<LevelMapApi>) => Promise<Value>): Promise<Value> {
    return this.#asked.about(plan, ask);
  }

  giveUp(what: 'map' | 'frame'): void {
    this.#asked.tell((api) => api.giveUp(what));
  }
}
