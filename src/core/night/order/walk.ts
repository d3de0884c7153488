import type { Demand } from './demands';
import type { Work } from './work';

/** What is going on in a stretch of the night. */
export type Doing =
  | 'change'
  | 'rig'
  | 'light'
  | 'wet down'
  | 'wait'
  | 'rehearse'
  | 'shoot'
  | 'meal'
  | 'strike';

/** A stretch of the night, for a job or for none; minutes of the night. */
export interface Stretch {
  readonly doing: Doing;
  readonly job: number | null;
  readonly from: number;
  readonly until: number;
}

/** How far a night has come. */
export interface Progress {
  /** Minutes of the night. */
  readonly time: number;
  readonly hasEaten: boolean;
  /** When the last shot on wet ground ended, minutes of the night. */
  readonly wetUntil: number;
  /** How often the ground has been wetted. */
  readonly wettings: number;
  /** By how many minutes shots have ended too late, together. */
  readonly late: number;
  /** What changing over has cost, minutes. */
  readonly changing: number;
}

/** What is asked of each job, from all demands on it. */
export interface Bounds {
  readonly earliestShot: number;
  readonly earliestRehearsal: number;
  /** By when the shot has to have ended, by each demand. */
  readonly latest: readonly number[];
  /** Whether there is no time for it at all. */
  readonly isNever: boolean;
}

/** What demands ask of each job. */
export function boundsOf({ jobs }: Work, demands: readonly Demand[]): readonly Bounds[] {
  const bySetup = new Map<string | null, Demand[]>(jobs.map(({ setupId }) => [setupId, []]));
  for (const demand of demands) bySetup.get(demand.setupId)?.push(demand);
  return jobs.map(({ setupId }) => {
    const own = bySetup.get(setupId) ?? [];
    const earliest = (isCast: boolean): number =>
      own
        .filter(({ kind }) => (kind === 'in from') === isCast)
        .reduce((latest, demand) => Math.max(latest, demand.earliest), -Infinity);
    return {
      earliestShot: earliest(false),
      earliestRehearsal: earliest(true),
      latest: own.map(({ latest }) => latest).filter(Number.isFinite),
      isNever: own.some(({ latest }) => latest === -Infinity),
    };
  });
}

/** How late counts where there is no time at all for a shot, minutes: more than any night has. */
const NEVER_MINUTES = 10000;

/** Before the first job. */
export const beginningOfWork = ({ call }: Work): Progress => ({
  time: call,
  hasEaten: false,
  wetUntil: -Infinity,
  wettings: 0,
  late: 0,
  changing: 0,
});

/**
 * The night with one more job done. Its change and move, rig and light come one after the other; a wet-down just before
 * the rehearsal; rehearsal and shot are one, as late as they have to be. The meal comes before whatever would end after it
 * is due. Ground is kept wet while wet setups follow each other, and is dry so many minutes after the last of them.
 *
 * A night that is earlier at some job, its ground wet no later, is never later after it, but for a meal that another has
 * while its ground dries: `suggest` relies on that.
 * @param last the job before, −1 for none
 * @param told takes the stretches, where they are wanted
 */
export function advance(
  work: Work,
  bounds: readonly Bounds[],
  before: Progress,
  last: number,
  next: number,
  told?: Stretch[],
): Progress {
  const { jobs, legs, mealBy, mealMinutes } = work;
  const job = jobs[next];
  let { time, hasEaten } = before;
  const tell = (doing: Doing, from: number, until: number): void => {
    if (until > from) told?.push({ doing, job: doing === 'meal' ? null : next, from, until });
  };
  const eat = (): void => {
    tell('meal', time, time + mealMinutes);
    time += mealMinutes;
    hasEaten = true;
  };
  const isDue = (until: number): boolean => !hasEaten && mealMinutes > 0 && until > mealBy;
  const leg = last < 0 ? 0 : legs[last][next];
  for (const [doing, minutes] of [
    ['change', leg],
    ['rig', job.rig],
    ['light', job.light],
  ] as const) {
    if (minutes > 0 && isDue(time + minutes)) eat();
    tell(doing, time, time + minutes);
    time += minutes;
  }
  const isWetted = job.ground === 'wet' && (last < 0 || jobs[last].ground !== 'wet');
  const wetMinutes = isWetted ? work.wetDownMinutes : 0;
  const { earliestShot, earliestRehearsal, latest } = bounds[next];
  const startAt = (ready: number): number =>
    Math.max(
      ready + wetMinutes,
      earliestRehearsal,
      earliestShot - job.rehearse,
      job.ground === 'dry' ? before.wetUntil + work.driesMinutes : -Infinity,
    );
  const length = job.rehearse + job.shoot;
  let start = startAt(time);
  if (isDue(start + length)) {
    eat();
    start = startAt(time);
  }
  tell('wait', time, start - wetMinutes);
  tell('wet down', start - wetMinutes, start);
  tell('rehearse', start, start + job.rehearse);
  tell('shoot', start + job.rehearse, start + length);
  const end = start + length;
  const lateness = bounds[next].isNever ? NEVER_MINUTES : 0;
  return {
    time: end,
    hasEaten,
    wetUntil: job.ground === 'wet' ? end : before.wetUntil,
    wettings: before.wettings + (isWetted ? 1 : 0),
    late: before.late + lateness + latest.reduce((sum, by) => sum + Math.max(0, end - by), 0),
    changing: before.changing + leg + wetMinutes,
  };
}
