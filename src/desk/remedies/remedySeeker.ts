import type { Remedy, Tolerance } from '../../core/clearance/remedies/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { SetupReport } from '../../core/report/types';
import { latestWins } from '../latestWins';
import { sentenceOf } from '../reasonOf';
import { type FindingKey, isAbout, keyOfFinding, remediesStore } from './remediesStore';
import type { RemediesWorker } from './remediesWorker';

/** A finding of a plan, how far lamps may be changed, and what is known of that plan already. */
export interface Seeking extends FindingKey {
  readonly plan: Plan;
  readonly tolerance: Tolerance;
  readonly seen: readonly SetupReport[];
}

/** Asks a worker for remedies, one finding at a time, the latest question first, and keeps what it finds. */
export class RemedySeeker {
  private readonly asking = latestWins<Seeking>((question, isLatest) =>
    this.run(question, isLatest).catch((error: unknown) => {
      if (isLatest())
        remediesStore.setState({
          share: null,
          trouble: sentenceOf('Nothing could be looked for', error),
        });
    }),
  );

  constructor(private readonly worker: Pick<RemediesWorker, 'remedies' | 'giveUp'>) {}

  /** Looks for what takes care of a finding, unless that is known already. */
  ask(question: Seeking): void {
    const { plan, tolerance } = question;
    const known = remediesStore.getState();
    const isSame = isAbout(known, plan, tolerance);
    if (!isSame) remediesStore.setState({ forPlan: plan, tolerance, found: new Map() });
    this.worker.giveUp();
    if (isSame && known.found.has(keyOfFinding(question))) {
      this.asking.drop();
      remediesStore.setState({ share: null, trouble: null });
      return;
    }
    remediesStore.setState({ share: 0, stopped: false, trouble: null });
    this.asking.ask(question);
  }

  /** Stops the search; what was found for other findings stays. */
  stop(): void {
    this.rest();
    remediesStore.setState({ stopped: true });
  }

  /** Nobody waits for it any more. */
  rest(): void {
    this.asking.drop();
    this.worker.giveUp();
    remediesStore.setState({ share: null });
  }

  private async run(question: Seeking, isLatest: () => boolean): Promise<void> {
    const { plan, setupId, itemId, tolerance, seen } = question;
    let isDone = false;
    const tell = (share: number): void => {
      // What a worker tells may come after its answer.
      if (isLatest() && !isDone) remediesStore.setState({ share });
    };
    const remedies: readonly Remedy[] | null = await this.worker.remedies(
      plan,
      { setupId, itemId, tolerance, seen },
      tell,
    );
    isDone = true;
    if (!isLatest() || !remedies) return;
    remediesStore.setState(({ found }) => ({
      share: null,
      found: new Map(found).set(keyOfFinding(question), remedies),
    }));
  }
}
