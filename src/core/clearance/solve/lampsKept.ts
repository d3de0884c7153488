import { spanOf } from '../../optics/camera';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Known } from '../remedies/known';
import { keepsWithin, LampWatch } from '../remedies/lampOnSubject';
import type { Tolerance } from '../remedies/types';

/** Lamps over a whole night: in the middle of each setup's span, every head has to keep its light on whom it lights most. */
export class LampsKept {
  private readonly watches: LampWatch[];

  constructor(
    { plan, setups }: Known,
    private readonly tolerance: Tolerance,
  ) {
    this.watches = setups.map(({ setup }) => {
      const [from, to] = spanOf(plan, setup);
      return new LampWatch(plan, setup, (from + to) / 2);
    });
  }

  /** By distance and direction from what lamps are aimed at, quick, without shadows; for a move over the deck, metres. */
  mayKeepMoved(ids: readonly string[], by: Spot): boolean {
    return this.every((watch) => watch.mayKeepMoved(ids, by, this.tolerance));
  }

  /** The same for any change. */
  mayKeep(after: Plan): boolean {
    return this.every((watch) => watch.mayKeep(after, this.tolerance));
  }

  /** Whether they keep within the tolerance by their light itself, shadows and beam included. */
  keeps(after: Plan): boolean {
    return this.every((watch) => keepsWithin(watch.changesOfAll(after), this.tolerance));
  }

  /** Asks the one first that failed last: it is likely to fail again. */
  private every(holds: (watch: LampWatch) => boolean): boolean {
    const at = this.watches.findIndex((watch) => !holds(watch));
    if (at < 0) return true;
    this.watches.unshift(...this.watches.splice(at, 1));
    return false;
  }
}
