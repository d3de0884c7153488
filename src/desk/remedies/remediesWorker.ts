import { proxy, type Remote } from 'comlink';
import type { RemedyQuestion } from '../../core/clearance/remedies/remediesFor';
import type { Remedy } from '../../core/clearance/remedies/types';
import type { SolveAnswer, SolveProgress, SolveQuestion } from '../../core/clearance/solve/types';
import type { Plan } from '../../core/plan/schema/plan';
import { AskedWorker } from '../workers/askedWorker';
import { PlanLine } from '../workers/planLine';
import { silenceOf } from '../workers/silence';
import type { RemediesApi } from './remediesApi';

/** Looks for remedies, or for a clear night, in a worker of its own, one at a time, which is started by its first question. */
export class RemediesWorker {
  readonly #asked: AskedWorker<RemediesApi>;
  /** Raised by giving up. */
  #given = 0;

  /** @param what what it is asked for, as the start of a sentence: `The look for remedies` */
  constructor(what: string) {
    this.#asked = new AskedWorker<RemediesApi>(
      () => new Worker(new URL('./remedies.worker.ts', import.meta.url), { type: 'module' }),
      ({ hold, holdModel }) => new PlanLine({ hold, holdModel }),
      { isThere: (api) => api.isThere(), tell: silenceOf(what) },
    );
  }

  /** Null when it was given up. */
  remedies(
    plan: Plan,
    question: RemedyQuestion,
    tell: (share: number) => void,
  ): Promise<readonly Remedy[] | null> {
    return this.#asked.about(
      plan,
      this.#unlessGivenUp((api) => api.remedies(question, proxy(tell))),
    );
  }

  /** Null when it was given up. */
  solve(
    plan: Plan,
    question: SolveQuestion,
    tell: (progress: SolveProgress) => void,
  ): Promise<SolveAnswer | null> {
    return this.#asked.about(
      plan,
      this.#unlessGivenUp((api) => api.solve(question, proxy(tell))),
    );
  }

  /** Ends what is looked for: it is answered with null. */
  giveUp(): void {
    this.#given += 1;
    this.#asked.tell((api) => api.giveUp());
  }

  /** One that hangs hears of no giving up, and what was given up since is not put to the worker after it. */
  #unlessGivenUp<Value>(
    ask: (api: Remote<RemediesApi>) => Promise<Value | null>,
  ): (api: Remote<RemediesApi>) => Promise<Value | null> {
    const own = this.#given;
    return (api) => (own === this.#given ? ask(api) : Promise.resolve(null));
  }
}
