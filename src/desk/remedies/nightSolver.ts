import type { SolveQuestion } from '../../core/clearance/solve/types';
import type { Plan } from '../../core/plan/schema/plan';
import { sentenceOf } from '../reasonOf';
import type { RemediesWorker } from './remediesWorker';
import { NO_SEARCH, solveStore } from './solveStore';

/** Has a worker look for what clears all setups, and keeps how far it is and what it comes to. */
export class NightSolver {
  #search = 0;

  constructor(private readonly worker: Pick<RemediesWorker, 'solve' | 'giveUp'>) {}

  /** Begins a search; one that runs is given up. */
  async start(plan: Plan, question: SolveQuestion): Promise<void> {
    this.#search += 1;
    const own = this.#search;
    this.worker.giveUp();
    solveStore.setState({ ...NO_SEARCH, forPlan: plan, running: true });
    const isLatest = (): boolean => own === this.#search;
    try {
      const answer = await this.worker.solve(plan, question, (progress) => {
        if (isLatest()) solveStore.setState({ progress });
      });
      if (!isLatest()) return;
      // What is told on the way may come after the answer.
      this.#search += 1;
      solveStore.setState({ running: false, answer });
    } catch (error) {
      if (!isLatest()) return;
      solveStore.setState({ running: false, trouble: sentenceOf('Nothing could be looked for', error) });
    }
  }

  /** Stops the search; the best so far stays. */
  stop(): void {
    if (!solveStore.getState().running) return;
    this.#end();
    solveStore.setState({ running: false, stopped: true });
  }

  /** Forgets what was found: it is about a plan that has gone. */
  forget(): void {
    this.#end();
    solveStore.setState(NO_SEARCH);
  }

  #end(): void {
    this.#search += 1;
    this.worker.giveUp();
  }
}
