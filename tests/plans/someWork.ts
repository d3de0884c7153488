import type { Beginnings } from '../../src/core/night/order/changes';
import type { Demand } from '../../src/core/night/order/demands';
import type { Job, Work } from '../../src/core/night/order/work';
import { USUAL_COSTS } from '../../src/core/night/times/takes';
import type { Draw } from './draw';

const CALL = 18 * 60;
/** Setups between which nothing changes. */
const ALIKE: Beginnings['setups'][number] = {
  setup: { lens: 'lens', body: 'body', mode: 'mode', ndStops: 0, support: 'sticks' },
  headingDegrees: 0,
  at: [0, 0],
  levels: [],
  lighting: null,
  isWet: false,
};

const onSetup = (kind: Demand['kind'], setupId: string, bounds: Partial<Demand>): Demand => ({
  kind,
  setupId,
  performerId: null,
  earliest: -Infinity,
  latest: Infinity,
  ...bounds,
});

function someDemands(jobs: readonly Job[], draw: Draw): Demand[] {
  const length = jobs.reduce(
    (sum, { rig, light, rehearse, shoot }) => sum + rig + light + rehearse + shoot,
    0,
  );
  const demands = jobs.flatMap(({ setupId }): Demand[] => [
    ...(draw.chance(0.25) ? [onSetup('from', setupId, { earliest: CALL + draw.whole(0, length) })] : []),
    ...(draw.chance(0.2) ? [onSetup('in from', setupId, { earliest: CALL + draw.whole(0, length) })] : []),
    ...(draw.chance(0.25)
      ? [onSetup('until', setupId, { latest: CALL + draw.whole(40, Math.max(60, length)) })]
      : []),
  ]);
  const once: Demand = { ...onSetup('wet once', '', {}), setupId: null };
  return draw.chance(0.4) ? [...demands, once] : demands;
}

/** A night of so many setups as numbers, with demands of all kinds; some of them can be kept by no order. */
export function someWork(count: number, draw: Draw): Work {
  const jobs = Array.from(
    { length: count },
    (_, k): Job => ({
      setupId: `s${k}`,
      rig: draw.whole(0, 20),
      light: draw.whole(0, 30),
      rehearse: draw.whole(0, 15),
      shoot: draw.whole(5, 60),
      move: draw.whole(0, 10),
      ground: draw.pick([null, null, 'wet', 'dry'] as const),
    }),
  );
  const legs = jobs.map(() => jobs.map(() => draw.whole(0, 40)));
  return {
    clock: { date: '2026-11-27', utcOffsetHours: 0, saidBy: 'night', change: null },
    call: CALL,
    jobs,
    legs,
    beginnings: { setups: jobs.map(() => ALIKE), lampIds: [], costs: USUAL_COSTS },
    demands: someDemands(jobs, draw),
    mealBy: CALL + draw.whole(60, 400),
    mealMinutes: draw.pick([0, 30, 60]),
    wetDownMinutes: draw.whole(0, 30),
    driesMinutes: draw.whole(0, 90),
    strikeMinutes: 30,
    order: jobs.map((__, k) => k),
  };
}
