import { getHeapStatistics, setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { cautionsOf } from '../../src/core/cautions/cautions';
import { formsAt } from '../../src/core/form/formsAt';
import { tapesOf } from '../../src/core/form/tape/tape';
import { spanOf } from '../../src/core/optics/camera';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import type { Plan } from '../../src/core/plan/schema/plan';
import { snapTargets } from '../../src/core/plan/snap/snapTargets';
import { powerOf } from '../../src/core/power/powerOf';
import { setupReport } from '../../src/core/report/setupReport';
import { HISTORY_STEPS, planStore } from '../../src/desk/planStore';
import { crowdedPlan } from '../plans/crowd';
import { DEMO, readPlan } from '../plans/readPlan';
import { printTable, type Row } from './table';

/**
 * What an hour of work leaves in memory: hundreds of edits, each looked at as the page and its workers look at it, and
 * taken back. Edits leave their steps in the history until it is full; what is reckoned of a plan goes with it. From then on
 * nothing is left.
 */
setFlagsFromString('--expose-gc');
const collect: unknown = runInNewContext('gc');

function heapBytes(): number {
  if (typeof collect === 'function') for (let times = 0; times < 3; times += 1) collect();
  const { used_heap_size: used, external_memory: outside } = getHeapStatistics();
  // What arrays of numbers hold lies outside of the heap.
  return used + outside;
}

const kilobytes = (bytes: number): string => `${(bytes / 1000).toFixed(1)} kB`;

/** What the page and its workers ask of every plan that they get. */
function lookAt(plan: Plan): void {
  const [setup] = plan.setups;
  formsAt(plan, 0);
  snapTargets(plan).around([0, 0], Number.POSITIVE_INFINITY);
  powerOf(plan);
  tapesOf(plan, plan.gear[0].id);
  setupReport(plan, setup, { at: spanOf(plan, setup)[0], briefly: true });
}

/** Moves a stand to and fro, and has all looked at, `count` times. */
function work(count: number, look: (plan: Plan) => void): void {
  const { edit } = planStore.getState();
  const id = planStore.getState().plan.gear.find(({ kind }) => kind === 'stand')?.id ?? '';
  for (let k = 0; k < count; k += 1) {
    edit('move', (plan) => moveItem(plan, { id, to: [(k % 7) * 0.1, (k % 5) * 0.1] }));
    look(planStore.getState().plan);
  }
}

/** Fills a history, and then goes on for as many edits again as are told. */
function rowsOf(what: string, plan: Plan, beyond: number, look: (plan: Plan) => void): readonly Row[] {
  planStore.getState().openPlan(plan, 'bench.plan.json');
  work(20, look);
  const before = heapBytes();
  work(HISTORY_STEPS - 20, look);
  const full = heapBytes();
  work(beyond, look);
  const later = heapBytes();
  for (let k = 0; k < HISTORY_STEPS; k += 1) planStore.getState().undo();
  for (let k = 0; k < HISTORY_STEPS; k += 1) planStore.getState().redo();
  look(planStore.getState().plan);
  const undone = heapBytes();
  return [
    {
      what: `${what}: left by an edit, of the first ${HISTORY_STEPS}`,
      reach: 'its step in the history',
      reached: `${kilobytes((full - before) / (HISTORY_STEPS - 20))} on ${kilobytes(before)}`,
    },
    {
      what: `${what}: left by an edit, of ${beyond} after them`,
      reach: 'nothing',
      reached: `${kilobytes((later - full) / beyond)} on ${kilobytes(full)}`,
    },
    {
      what: `${what}: left by taking back ${HISTORY_STEPS} and doing them again`,
      reach: 'nothing',
      reached: kilobytes(undone - later),
    },
  ];
}

const demo = readPlan(DEMO);
const nothing = (): void => {};
printTable([
  ...rowsOf('the demo, edited', demo, 1000, nothing),
  ...rowsOf('the demo, edited and looked at', { ...demo, title: 'Again' }, 500, lookAt),
  ...rowsOf('the demo, edited, with its cautions', { ...demo, title: 'Once more' }, 200, cautionsOf),
  ...rowsOf('2,000 items, edited', crowdedPlan(2000, 8, 4, 0, 30), 1000, nothing),
  ...rowsOf(
    '2,000 items, edited, with what a hand catches on',
    crowdedPlan(2000, 8, 5, 0, 30),
    200,
    (plan) => {
      snapTargets(plan).around([0, 0], Number.POSITIVE_INFINITY);
      tapesOf(plan, plan.gear[0].id);
    },
  ),
]);
