import { availableParallelism } from 'node:os';
import { setupReport } from '../../src/core/report/setupReport';
import { crowdedPlan } from '../plans/crowd';
import { ms, printTable, type Row } from './table';

/** Whole spans of a night of twenty ten-second moves, on one core; and how that grows with items and setups. */
const timed = (task: () => void): number => {
  const start = performance.now();
  task();
  return performance.now() - start;
};

const rows: Row[] = [];
const night = crowdedPlan(60, 20, 1);
setupReport(night, night.setups[0]);
const each = night.setups.map((setup) => timed(() => setupReport(night, setup)));
const sum = each.reduce((total, time) => total + time, 0);
const cores = Math.min(2, availableParallelism());
rows.push({
  what: 'one 10 s move, spans to 1/24 s, middle of 20',
  reach: '',
  reached: ms([...each].sort((a, b) => a - b)[10]),
});
rows.push({ what: 'the night, 20 such setups, one core', reach: '', reached: ms(sum) });
rows.push({
  what: `the night on ${cores} cores, setups shared out`,
  reach: '≤ 10,000 ms',
  reached: `${ms(sum / cores)}, by division`,
});

const stills = timed(() => {
  for (const setup of night.setups) setupReport(night, setup, { at: night.beats[0].atSeconds });
});
rows.push({ what: 'first answers: stills of all 20 setups', reach: '≤ 300 ms', reached: ms(stills) });

let first = 0;
for (const factor of [1, 3, 10]) {
  const plan = crowdedPlan(20 * factor, 1, 2);
  setupReport(plan, plan.setups[0], { at: plan.beats[0].atSeconds });
  const runs = Array.from({ length: 5 }, () =>
    timed(() => setupReport(plan, plan.setups[0], { at: plan.beats[0].atSeconds })),
  );
  const time = runs.sort((a, b) => a - b)[2];
  if (factor === 1) first = time;
  rows.push({
    what: `one instant, ${20 * factor} items`,
    reach: factor === 1 ? '' : `≤ ${(factor * 1.1).toFixed(1)} times`,
    reached: `${ms(time)}, ${(time / first).toFixed(1)} times`,
  });
}
printTable(rows);
