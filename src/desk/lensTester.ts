import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import type { LensTrial } from '../core/report/lensTest';
import { allLensTries, presentTry } from '../core/report/lensTries';
import { latestWins } from './latestWins';
import { lensTestStore } from './lensTestStore';
import { sentenceOf } from './reasonOf';

/** What a lens test is asked: every lens on a setup, over its whole move, or at one instant of the action's clock. */
export interface LensQuestion {
  readonly plan: Plan;
  readonly setup: Setup;
  /** Null for the whole move. */
  readonly atSeconds: number | null;
}

/** Whoever tries lenses: a worker. It does one at a time; a newer question ends the one that it is at with null. */
export interface LensTrier {
  readonly tryLens: (
    plan: Plan,
    setup: Setup,
    tryId: string,
    atSeconds: number | null,
    tell: (share: number) => void,
  ) => Promise<LensTrial | null>;
  readonly giveUp: () => void;
}

/** All that a trial depends on: what a lens is focused on, exposed for or called changes no frame. */
function basisOf({ plan, setup, atSeconds }: LensQuestion, models: unknown): readonly unknown[] {
  const {
    lens,
    stop,
    label,
    focus,
    iso,
    ndStops,
    filterLossStops,
    balanceKelvin,
    shutterDegrees,
    ...framing
  } = setup;
  const { pieces, beats, cast, gear, kit, ground, safety } = plan;
  return [pieces, beats, cast, gear, kit, ground, safety, models, atSeconds, JSON.stringify(framing)];
}

const same = (a: readonly unknown[] | null, b: readonly unknown[]): boolean =>
  a?.length === b.length && b.every((value, k) => Object.is(value, a[k]));

/** The lens that is on the camera first: its answer is the one that the others are held against. */
const presentFirst = ({ plan, setup }: LensQuestion): readonly string[] => {
  const tries = allLensTries(plan, setup);
  const [present, others] = [true, false].map((is) => tries.filter(({ isPresent }) => isPresent === is));
  return [...present, ...others].map(({ id }) => id);
};

/** Asks a worker lens by lens, keeps what it finds in lensTestStore, and lets single trials in between. */
export class LensTester {
  private at: 'test' | 'single' | null = null;
  private line: Promise<unknown> = Promise.resolve();
  private readonly asking = latestWins<LensQuestion>((question, isLatest) =>
    this.run(question, isLatest).catch((error: unknown) =>
      lensTestStore.setState({
        running: null,
        trouble: sentenceOf('The lens test could not be made', error),
      }),
    ),
  );

  constructor(
    private readonly worker: LensTrier,
    private readonly modelsAtHand: () => unknown,
  ) {}

  /** Tries every lens on a setup; what is known of the same question already is kept and not tried again. */
  ask(question: LensQuestion): void {
    const basis = basisOf(question, this.modelsAtHand());
    const { basis: before, trials, running, stopped } = lensTestStore.getState();
    if (same(before, basis)) {
      if (running || stopped || presentFirst(question).every((id) => trials.has(id))) return;
    } else lensTestStore.setState({ basis, trials: new Map() });
    lensTestStore.setState({ stopped: false, trouble: null });
    if (this.at === 'test') this.worker.giveUp();
    this.asking.ask(question);
  }

  /** Stops the test; the lenses that were tried stay. */
  stop(): void {
    this.asking.drop();
    if (this.at === 'test') this.worker.giveUp();
    lensTestStore.setState({ running: null, stopped: true });
  }

  /** Goes on with a test that was stopped. */
  goOn(question: LensQuestion): void {
    lensTestStore.setState({ stopped: false });
    this.ask(question);
  }

  /** A setup as it is, which need not be in the plan, over its whole move; null once nobody waits for it any more. */
  async single(plan: Plan, setup: Setup, signal: AbortSignal): Promise<LensTrial | null> {
    const present = presentTry(plan, setup);
    if (!present) return null;
    signal.addEventListener('abort', () => {
      if (this.at === 'single') this.worker.giveUp();
    });
    while (!signal.aborted) {
      const trial = await this.inLine('single', () =>
        signal.aborted
          ? Promise.resolve(null)
          : this.worker.tryLens(plan, setup, present.id, null, () => undefined),
      );
      if (trial) return trial;
    }
    return null;
  }

  private async run(question: LensQuestion, isLatest: () => boolean): Promise<void> {
    const { plan, setup, atSeconds } = question;
    const tryIds = presentFirst(question);
    for (const tryId of tryIds) {
      // What ended a trial may have been a single one that came in between: then it is tried again.
      while (!lensTestStore.getState().trials.has(tryId)) {
        const running = { tryId, done: lensTestStore.getState().trials.size, of: tryIds.length, share: 0 };
        lensTestStore.setState({ running });
        const trial = await this.inLine('test', () =>
          this.worker.tryLens(plan, setup, tryId, atSeconds, (share) => {
            if (isLatest()) lensTestStore.setState({ running: { ...running, share } });
          }),
        );
        if (!isLatest()) return;
        if (!trial) continue;
        lensTestStore.setState(({ trials }) => ({ trials: new Map(trials).set(tryId, trial) }));
      }
    }
    lensTestStore.setState({ running: null });
  }

  /** The worker does one thing at a time: each waits until what was asked before is answered. */
  private inLine<Value>(at: 'test' | 'single', job: () => Promise<Value>): Promise<Value> {
    const next = this.line.then(async () => {
      this.at = at;
      try {
        return await job();
      } finally {
        this.at = null;
      }
    });
    this.line = next.catch(() => undefined);
    return next;
  }
}
