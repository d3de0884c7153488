import type { ReportWorker } from './reportWorker';

/** One of those who read the night. */
export type Hand = Pick<
  ReportWorker,
  'read' | 'darken' | 'continuity' | 'blockingFaults' | 'notices' | 'giveUp' | 'startAnew'
>;

/** What is left has to look as if it took one hand so long, milliseconds, that another is begun: it takes seconds to get going. */
const WORTH_ANOTHER_MS = 3000;
/** More hands than this would keep a plan, and its scans, too often. */
const MOST_HANDS = 4;

/** How many hands read on a machine of so many cores: all of two, of more all but the page's own. */
export const handsFor = (cores: number): number =>
  cores <= 2 ? Math.max(1, cores) : Math.min(MOST_HANDS, cores - 1);

/**
 * Workers that share out the night, each taking the next of it that nobody has begun. Some are there from the start,
 * others are begun when there is enough to do, and kept: the next time they take part from the start.
 */
export class NightTeam {
  readonly #hands: Hand[];
  /** By name of a task, the place of the hand that did it last. */
  readonly #didLast = new Map<string, number>();

  /**
   * @param there those that are there: the first always works, the others as far as there may be so many
   * @param begin begins the hand of a further place
   * @param most how many may work
   * @param isCalm whether nobody needs the processor for something quicker: further hands begin nothing meanwhile
   */
  constructor(
    there: readonly [Hand, ...Hand[]],
    private readonly begin: (place: number) => Hand,
    private readonly most: number,
    private readonly isCalm: () => boolean,
  ) {
    this.#hands = [...there];
  }

  /** The hand that is always there. */
  get first(): Hand {
    return this.#hands[0];
  }

  /**
   * Has each of some tasks done by one of the hands, the first of them first, then what the same hand did last time:
   * it may know most of it still. A further hand that fails leaves its task to the others.
   * @param nameOf what a task is called from one time to the next
   * @param work false where nothing further shall be begun
   * @throws (the promise) what the first hand failed with, once no hand is at work any more
   */
  async shareOut<Task>(
    tasks: readonly Task[],
    nameOf: (task: Task) => string,
    work: (hand: Hand, task: Task) => Promise<boolean>,
  ): Promise<void> {
    const left = [...tasks];
    /** The first task of all; then of those that are a hand's own, else of those that are nobody's, else of what is left. */
    const take = (place: number): Task => {
      const isOwn = (task: Task) => this.#didLast.get(nameOf(task)) === place;
      const isFree = (task: Task) => !this.#didLast.has(nameOf(task));
      const own = left.length === tasks.length ? 0 : left.findIndex(isOwn);
      const [task] = left.splice(Math.max(0, own >= 0 ? own : left.findIndex(isFree)), 1);
      this.#didLast.set(nameOf(task), place);
      return task;
    };
    const helping = new Map<number, Promise<void>>();
    const run = async (place: number): Promise<void> => {
      this.#hands[place] ??= this.begin(place);
      const hand = this.#hands[place];
      while (left.length > 0 && (place === 0 || this.isCalm())) {
        const task = take(place);
        const begun = performance.now();
        const isToGoOn = await work(hand, task).catch((error: unknown) => {
          left.unshift(task);
          throw error;
        });
        if (!isToGoOn) left.length = 0;
        callHelp(performance.now() - begun);
      }
    };
    const callHelp = (taskMs: number): void => {
      for (let place = 1; place < this.most && this.isCalm(); place += 1) {
        const isThere = place < this.#hands.length;
        const isWorthIt = isThere ? left.length > 0 : left.length * taskMs > WORTH_ANOTHER_MS;
        if (helping.has(place) || !isWorthIt) continue;
        const help = run(place)
          .catch(() => undefined)
          .finally(() => helping.delete(place));
        helping.set(place, help);
      }
    };
    try {
      // Once more for what a further hand left when the first had done its own.
      do {
        const own = run(0);
        callHelp(0);
        await own;
        await Promise.all(helping.values());
      } while (left.length > 0);
    } catch (error) {
      left.length = 0;
      this.giveUp();
      await Promise.all(helping.values());
      throw error;
    }
  }

  /** Gives up what all of them are at. */
  giveUp(): void {
    for (const hand of this.#hands) hand.giveUp();
  }

  /** Ends what all of them are at; see `ReportWorker`. */
  startAnew(): void {
    for (const hand of this.#hands) hand.startAnew();
  }
}
