import type { Demand } from '../order/demands';
import { advance, type Bounds, beginningOfWork, boundsOf, type Progress } from '../order/walk';
import type { Work } from '../order/work';

/** What an order is worth, the less the better, the first that differs first. */
export interface Worth {
  /** Minutes that shots end too late, with a charge for every wet-down too many. */
  readonly late: number;
  /** When the last shot has ended, minutes of the night. */
  readonly time: number;
  /** What changing over costs, minutes. */
  readonly changing: number;
}

/** What one wet-down too many counts for, minutes late: an estimate, no source. */
const WETTING_MINUTES = 60;

/** Whether one order is worth more than another. */
export const isBetter = (a: Worth, b: Worth): boolean =>
  a.late !== b.late ? a.late < b.late : a.time !== b.time ? a.time < b.time : a.changing < b.changing;

/** Whether a night is asked to wet its ground once. */
export const wetsOnce = (demands: readonly Demand[]): boolean =>
  demands.some(({ kind }) => kind === 'wet once');

/** What orders of a work are worth under some of its demands; what is worked out once for all of them is kept here. */
export class Valuer {
  readonly bounds: readonly Bounds[];
  readonly wetsOnce: boolean;

  constructor(
    readonly work: Work,
    readonly demands: readonly Demand[] = work.demands,
  ) {
    this.bounds = boundsOf(work, demands);
    this.wetsOnce = wetsOnce(demands);
  }

  /**
   * How far a night has come with the jobs of an order done.
   * @param first place in the order of the first job that is still to be done
   * @param last the job before it, −1 for none
   */
  after(order: readonly number[], first = 0, last = -1, before = beginningOfWork(this.work)): Progress {
    let [at, job] = [before, last];
    for (let place = first; place < order.length; place += 1) {
      at = advance(this.work, this.bounds, at, job, order[place]);
      job = order[place];
    }
    return at;
  }

  worth(order: readonly number[]): Worth {
    const at = this.after(order);
    const tooMany = this.wetsOnce ? Math.max(0, at.wettings - 1) : 0;
    return { late: at.late + tooMany * WETTING_MINUTES, time: at.time, changing: at.changing };
  }
}
