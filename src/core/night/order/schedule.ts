import { type Changes, changesBetween } from './changes';
import type { Demand } from './demands';
import { advance, beginningOfWork, boundsOf, type Progress, type Stretch } from './walk';
import type { Work } from './work';

/** A demand that an order does not keep, and by how many minutes; infinite where there is no time for it at all. */
export interface Breach {
  readonly demand: Demand;
  readonly byMinutes: number;
}

/** One setup in its place of the night; minutes of the night. */
export interface Placed {
  readonly job: number;
  readonly setupId: string;
  /** What changed from the one before; null for the first. */
  readonly changes: Changes | null;
  readonly from: number;
  readonly shotFrom: number;
  readonly until: number;
}

/** A night in an order. */
export interface Schedule {
  readonly order: readonly number[];
  readonly stretches: readonly Stretch[];
  readonly setups: readonly Placed[];
  readonly meal: { readonly from: number; readonly until: number } | null;
  /** When the last shot has ended, and when everyone is off. */
  readonly lastShot: number;
  readonly wrap: number;
  readonly breaches: readonly Breach[];
  readonly end: Progress;
}

/** What an order does not keep of what is asked. */
function breachesOf(demands: readonly Demand[], setups: readonly Placed[], end: Progress): Breach[] {
  const byId = new Map(setups.map((placed) => [placed.setupId, placed]));
  return demands.flatMap((demand): Breach[] => {
    if (demand.kind === 'wet once') return end.wettings > 1 ? [{ demand, byMinutes: 0 }] : [];
    const placed = byId.get(demand.setupId ?? '');
    const byMinutes = placed ? placed.until - demand.latest : 0;
    return byMinutes > 0 ? [{ demand, byMinutes }] : [];
  });
}

/** A night in an order of its jobs, which may leave some out. */
export function scheduleOf(work: Work, order: readonly number[] = work.order): Schedule {
  const { jobs, demands } = work;
  const bounds = boundsOf(work, demands);
  const stretches: Stretch[] = [];
  let end = beginningOfWork(work);
  const setups = order.map((job, place): Placed => {
    const last = place === 0 ? -1 : order[place - 1];
    const told: Stretch[] = [];
    end = advance(work, bounds, end, last, job, told);
    stretches.push(...told);
    return {
      job,
      setupId: jobs[job].setupId,
      changes: last < 0 ? null : changesBetween(work.beginnings, last, job),
      from: told.find(({ doing }) => doing !== 'meal')?.from ?? end.time,
      shotFrom: end.time - jobs[job].shoot,
      until: end.time,
    };
  });
  const wrap = end.time + work.strikeMinutes;
  if (work.strikeMinutes > 0) stretches.push({ doing: 'strike', job: null, from: end.time, until: wrap });
  const meal = stretches.find(({ doing }) => doing === 'meal');
  return {
    order,
    stretches,
    setups,
    meal: meal ? { from: meal.from, until: meal.until } : null,
    lastShot: end.time,
    wrap,
    breaches: breachesOf(demands, setups, end),
    end,
  };
}
