import type { NightTimes } from '../sky/night';
import type { Schedule } from './order/schedule';
import type { Work } from './order/work';
import type { Drop } from './suggest/drop';
import type { Darkness } from './times/darkness';
import type { NightClock } from './times/nightClock';

/** A sentence about a night: what breaks something that is asked, or what is only said. */
export interface NightNote {
  readonly standing: 'breaks' | 'said';
  readonly sentence: string;
}

/** A plan's night in the order that it has. Times are minutes of the night: see `NightClock`. */
export interface Night {
  readonly clock: NightClock;
  readonly call: number;
  readonly sky: NightTimes;
  readonly darkness: Darkness;
  readonly work: Work;
  readonly schedule: Schedule;
  /** By when everyone should be wrapped; null where nobody asks. */
  readonly wrapBy: number | null;
  /** What to leave out so that it is; null where it is, or where nothing would do. */
  readonly drop: Drop | null;
  readonly notes: readonly NightNote[];
}
