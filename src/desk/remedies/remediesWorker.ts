import { proxy, type Remote, wrap } from 'comlink';
import type { RemedyQuestion } from '../../core/clearance/remedies/remediesFor';
import type { Remedy } from '../../core/clearance/remedies/types';
import type { SolveAnswer, SolveProgress, SolveQuestion } from '../../core/clearance/solve/types';
import type { Plan } from '../../core/plan/schema/plan';
import { PlanLine } from '../workers/planLine';
import type { RemediesApi } from './remediesApi';

/** A worker that was started, and the line on which plans go over to it. */
interface OtherEnd {
  readonly api: Remote<RemediesApi>;
  readonly line: PlanLine;
}

/** Looks for remedies, or for a clear night, in a worker of its own, one at a time, which is started by its first question. */
export class RemediesWorker {
  #end: OtherEnd | null = null;
  /** Ends what is waited for when the worker cannot be started, which no question would ever answer. */
  #fail: (error: Error) => void = () => undefined;

  /** Null when it was given up. */
  remedies(
    plan: Plan,
    question: RemedyQuestion,
    tell: (share: number) => void,
  ): Promise<readonly Remedy[] | null> {
    return this.#ask(plan, (api) => api.remedies(question, proxy(tell)));
  }

  /** Null when it was given up. */
  solve(
    plan: Plan,
    question: SolveQuestion,
    tell: (progress: SolveProgress) => void,
  ): Promise<SolveAnswer | null> {
    return this.#ask(plan, (api) => api.solve(question, proxy(tell)));
  }

  /** Ends what is looked for: it is answered with null. */
  giveUp(): void {
    void this.#end?.api.giveUp();
  }

  #ask<Answer>(plan: Plan, ask: (api: Remote<RemediesApi>) => Promise<Answer>): Promise<Answer> {
    return new Promise((resolve, reject) => {
      this.#fail = (error) => {
        // A worker that failed once is not asked again: the next question starts another.
        this.#end = null;
        reject(error);
      };
      const { api, line } = this.#end ?? this.#start();
      line.about(plan, () => ask(api)).then(resolve, reject);
    });
  }

  #start(): OtherEnd {
    const worker = new Worker(new URL('./remedies.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('error', (event) =>
      this.#fail(new Error(event.message || 'the worker did not start')),
    );
    const api = wrap<RemediesApi>(worker);
    this.#end = { api, line: new PlanLine({ hold: api.hold, holdModel: api.holdModel }) };
    return this.#end;
  }
}
