import {
  REMEDY_WAYS,
  type RemedyQuestion,
  type RemedyWay,
  rankedRemedies,
} from '../../core/clearance/remedies/remediesFor';
import type { Remedy } from '../../core/clearance/remedies/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { RemediesWorker } from './remediesWorker';

type Hand = Pick<RemediesWorker, 'remedies' | 'giveUp'>;

/** Several workers on one finding: each takes the next way that nobody has looked into. */
export class RemedyTeam implements Hand {
  /** Raised by each search and by giving up: a hand whose answer was on its way by then takes no further way. */
  #search = 0;

  constructor(private readonly hands: readonly Hand[]) {}

  /** All that the hands find, ranked; null when it was given up. `tell` hears the done share, 0..1. */
  async remedies(
    plan: Plan,
    question: RemedyQuestion,
    tell: (share: number) => void,
  ): Promise<readonly Remedy[] | null> {
    this.#search += 1;
    const own = this.#search;
    const { seen, ...unseen } = question;
    const left = [...(question.ways ?? REMEDY_WAYS)];
    const count = left.length;
    const shares = new Map<RemedyWay, number>();
    const found: Remedy[] = [];
    const work = async (hand: Hand): Promise<boolean> => {
      // Reports are large, and a hand that has answered once about a plan knows what its setups see.
      let asked = question;
      for (let way = left.shift(); way; way = left.shift()) {
        const taken = way;
        const some = await hand.remedies(plan, { ...asked, ways: [taken] }, (share) => {
          shares.set(taken, share);
          tell([...shares.values()].reduce((sum, each) => sum + each, 0) / count);
        });
        if (!some || own !== this.#search) return false;
        asked = unseen;
        shares.set(taken, 1);
        found.push(...some);
      }
      return true;
    };
    const ended = await Promise.allSettled(
      this.hands.map((hand) =>
        work(hand)
          .catch((error: unknown) => {
            if (own === this.#search) this.giveUp();
            throw error;
          })
          .finally(() => {
            // Where one ends early, the others need not go on.
            left.length = 0;
          }),
      ),
    );
    for (const one of ended) if (one.status === 'rejected') throw one.reason;
    return ended.every((one) => one.status === 'fulfilled' && one.value) ? rankedRemedies(plan, found) : null;
  }

  /** Ends what is looked for: it is answered with null. */
  giveUp(): void {
    this.#search += 1;
    for (const hand of this.hands) hand.giveUp();
  }
}
