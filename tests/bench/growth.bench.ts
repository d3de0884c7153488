import { cautionsOf } from '../../src/core/cautions/cautions';
import { continuityOf } from '../../src/core/continuity/continuity';
import { coverageOf } from '../../src/core/continuity/coverage';
import { formsAt } from '../../src/core/form/formsAt';
import { tapesOf } from '../../src/core/form/tape/tape';
import { nightOf } from '../../src/core/night/nightOf';
import { packingOf } from '../../src/core/night/packing/packingOf';
import { spanOf } from '../../src/core/optics/camera';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import { itemsOf } from '../../src/core/plan/items';
import { differencesOf, suggestedChoices } from '../../src/core/plan/merge/differences';
import { mergePlans } from '../../src/core/plan/merge/mergePlans';
import { parsePlan, parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import { serialisePlan } from '../../src/core/plan/serialise';
import { snapTargets } from '../../src/core/plan/snap/snapTargets';
import { powerOf } from '../../src/core/power/powerOf';
import { blockingFaults } from '../../src/core/report/castNotices';
import { noticesOf } from '../../src/core/report/notices';
import { setupReport } from '../../src/core/report/setupReport';
import { planToGlb } from '../../src/exchange/glb';
import { linkOfPlan } from '../../src/exchange/link/link';
import { crowdedPlan } from '../plans/crowd';
import { ms } from './table';

/**
 * How the time of the processor grows with the plan: the same work on plans of 1, 3, 10 and 30 times as many items, and as many setups,
 * up to 2,000 items and 200 setups. From the third to the last a plan is ten times as large; work that grows with it may
 * take eleven times as long. GROWTH=items, GROWTH=setups or GROWTH=moves measures one of them, ROWS=tapes what is called so.
 */
const TIMES = [1, 3, 10, 30] as const;
const MOST_ITEMS = 2000;
const MOST_SETUPS = 200;
const SEED = 4;
/** So often at least what takes no seconds is measured: of large plans too the first time is that of a cold machine. */
const LEAST_RUNS = 4;
/** A quick task is measured until this has gone by, ms. */
const LONG_ENOUGH_MS = 150;
/** What takes as long as this at one size is not asked of the next, ms. */
const TOO_LONG_MS = 60_000;

/** A plan as nobody has seen it yet: nothing is known of its records. */
const anew = (plan: Plan): Plan => structuredClone(plan);

/** Time of the processor that this process has had, ms: what else the machine does is not counted. */
function processorMs(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Least time of a task that is given a fresh copy of the plan each time, milliseconds of the processor. */
function leastMs(plan: Plan, task: (plan: Plan) => unknown): number {
  let [least, sum] = [Number.POSITIVE_INFINITY, 0];
  for (let run = 0; run < LEAST_RUNS || (run < 7 && sum < LONG_ENOUGH_MS); run += 1) {
    const copy = anew(plan);
    const start = processorMs();
    task(copy);
    const took = processorMs() - start;
    least = Math.min(least, took);
    sum += took;
    if (took > LONG_ENOUGH_MS * 10) break;
  }
  return least;
}

/** Everything moved a little: a copy that differs in each item. */
function shifted(plan: Plan): Plan {
  return {
    ...plan,
    pieces: plan.pieces.map((piece) => ({ ...piece, label: `${piece.label} too` })),
    gear: plan.gear.map((gear) => ({ ...gear, label: `${gear.label} too` })),
    setups: plan.setups.map((setup) => ({ ...setup, label: `${setup.label} too` })),
  };
}

type Task = (plan: Plan) => unknown;

const WORK: readonly (readonly [string, Task])[] = [
  ['read from text', (plan) => parsePlanText(serialisePlan(plan))],
  ['written as text', serialisePlan],
  ['an edit, checked', (plan) => parsePlan(moveItem(plan, { id: plan.gear[0].id, to: [1, 1] }))],
  ['forms of all items', (plan) => formsAt(plan, 0)],
  ['what a hand catches on', (plan) => snapTargets(plan)],
  ['all tapes', (plan) => itemsOf(plan).map(({ record }) => tapesOf(plan, record.id))],
  ['cautions', cautionsOf],
  ['power', (plan) => powerOf(plan)],
  ['faults of walks', blockingFaults],
  ['notices', noticesOf],
  ['a copy with everything renamed: differences', (plan) => differencesOf(plan, shifted(plan))],
  [
    'the same merged, all theirs',
    (plan) => {
      const theirs = shifted(plan);
      const found = differencesOf(plan, theirs);
      return mergePlans(plan, theirs, new Map(found.map(({ key }) => [key, 'theirs'])));
    },
  ],
  [
    'the same merged in three ways',
    (plan) =>
      mergePlans(plan, shifted(plan), suggestedChoices(differencesOf(plan, shifted(plan), plan)), plan),
  ],
  ['a link', (plan) => linkOfPlan(plan)],
  ['a scene as GLB', (plan) => planToGlb(plan, 0)],
];

const OF_ITEMS: readonly (readonly [string, Task])[] = [
  ...WORK,
  [
    'findings of a setup at an instant',
    (plan) => setupReport(plan, plan.setups[0], { at: spanOf(plan, plan.setups[0])[0] }),
  ],
];

const OF_SETUPS: readonly (readonly [string, Task])[] = [
  ...WORK,
  [
    'findings of all setups at an instant',
    (plan) =>
      plan.setups.map((setup) => setupReport(plan, setup, { at: spanOf(plan, setup)[0], briefly: true })),
  ],
  ['continuity', (plan) => continuityOf(plan)],
  ['the night, timed', (plan) => nightOf(plan)],
  ['the night, packed', (plan) => packingOf(plan)],
];

const OF_MOVES: readonly (readonly [string, Task])[] = [
  ['continuity of moves', (plan) => continuityOf(plan)],
  ['coverage by moves', coverageOf],
  ['the night with moves, packed', (plan) => packingOf(plan)],
];

function measure(what: string, plans: readonly Plan[], work: readonly (readonly [string, Task])[]): void {
  console.log(`\n  ${what}: ${TIMES.map((times) => `× ${times}`).join(', ')}; what ten times cost\n`);
  const widest = Math.max(...work.map(([name]) => name.length));
  for (const [name, task] of work.filter(([name]) => name.includes(process.env.ROWS ?? ''))) {
    const took: number[] = [];
    for (const plan of plans) {
      if ((took.at(-1) ?? 0) > TOO_LONG_MS) break;
      try {
        took.push(leastMs(plan, task));
      } catch (error) {
        if (!(error instanceof Error)) throw error;
        console.log(
          `  ${name}, ${itemsOf(plan).length} items, ${plan.setups.length} setups: ${error.message}`,
        );
        break;
      }
    }
    const ratios = [
      [0, 2],
      [1, 3],
    ].flatMap(([from, to]) => (took.length > to ? [`${(took[to] / took[from]).toFixed(1)} times`] : []));
    console.log(
      `  ${name.padEnd(widest)}  ${took.map((time) => ms(time).padStart(10)).join(' ')}  ${ratios.join(', ')}`,
    );
  }
}

const wanted = process.env.GROWTH ?? 'items, setups, moves';
if (wanted.includes('items')) {
  const plans = TIMES.map((times) => crowdedPlan(Math.round((MOST_ITEMS * times) / 30), 8, SEED, 0, 30));
  measure(`items, ${plans.map((plan) => itemsOf(plan).length).join(', ')}, with 8 setups`, plans, OF_ITEMS);
}
if (wanted.includes('setups')) {
  const plans = TIMES.map((times) => crowdedPlan(66, Math.round((MOST_SETUPS * times) / 30), SEED, 0));
  measure(`setups, ${plans.map(({ setups }) => setups.length).join(', ')}, with 66 items`, plans, OF_SETUPS);
}
if (wanted.includes('moves')) {
  const plans = TIMES.map((times) => crowdedPlan(66, Math.round((MOST_SETUPS * times) / 30), SEED, 10));
  measure(
    `setups, ${plans.map(({ setups }) => setups.length).join(', ')}, that move for 10 s, with 66 items`,
    plans,
    OF_MOVES,
  );
}
