import { movableIds } from '../../src/core/clearance/solve/movers';
import { solveSteps } from '../../src/core/clearance/solve/solve';
import { anchorOf } from '../../src/core/plan/edits/anchorOf';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import { setupReport } from '../../src/core/report/setupReport';
import { inOneGo } from '../../src/core/units/steps';
import { DEMO, readPlan } from '../plans/readPlan';
import { ms, printTable } from './table';

/**
 * The demo's night solved, its reports being there already, in processor time; beside it one report of all setups, and
 * what asking such a report of each place of 0.2 m within 4 m would take, for each thing that may move.
 */
const demo = readPlan(DEMO);
const spent = (begun: NodeJS.CpuUsage): number => {
  const { user, system } = process.cpuUsage(begun);
  return (user + system) / 1000;
};

const reading = process.cpuUsage();
const seen = demo.setups.map((setup) => setupReport(demo, setup));
const once = spent(reading);
const solving = process.cpuUsage();
const answer = inOneGo(solveSteps(demo, { seen, tolerance: { levelStops: 0.5, angleDegrees: 15 } }));
const solved = spent(solving);
const ids = movableIds(demo);
const [first] = ids;
const from = anchorOf(demo, first) ?? [0, 0];
const moved = moveItem(demo, { id: first, to: [from[0] + 0.2, from[1]] });
const asking = process.cpuUsage();
for (const setup of moved.setups) setupReport(moved, setup);
const each = spent(asking);
const places = Math.round((Math.PI * 4 * 4) / (0.2 * 0.2));
printTable([
  { what: `${demo.setups.length} setups read once`, reach: '', reached: ms(once) },
  {
    what: `${ids.length} things that may move, ${answer.tried} places and shapes tried`,
    reach: '≤ 10000 ms',
    reached: ms(solved),
  },
  {
    what: `a report for each of ${places} places of each thing, from one of them`,
    reach: '',
    reached: `${((each * places * ids.length) / 3_600_000).toFixed(0)} hours, ${Math.round((each * places * ids.length) / solved).toLocaleString('en')} times as long`,
  },
  { what: answer.sentence, reach: '', reached: `${answer.cleared} of ${answer.setups} setups` },
]);
