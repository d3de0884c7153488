import { clearGround } from '../../src/core/clearance/ground/clearGround';
import { groundAt } from '../../src/core/clearance/ground/groundAt';
import { heightLimitSteps } from '../../src/core/clearance/ground/heightLimit';
import { GROUND_STATES } from '../../src/core/clearance/ground/types';
import { setupReport } from '../../src/core/report/setupReport';
import { inOneGo } from '../../src/core/units/steps';
import { crowdedPlan, randomPlan } from '../plans/crowd';
import { tryGround } from '../plans/groundTrial';
import { standsOn } from '../plans/standOn';
import { movingPlan } from '../properties/sight/movingPlans';
import { medianMs, ms, printTable, type Row } from './table';

/**
 * Clear ground of a roof of 30 × 20 m in squares of 0.25 m for twenty ten-second moves, beside a report for each square;
 * then what the report says of stands on random squares of random plans. GROUND_PLANS (6) chooses how many of each kind.
 */
const HEIGHT = 2.4;
const wet = crowdedPlan(94, 20, 1);
const dry = { ...wet, ground: { ...wet.ground, wetness: 'dry' as const } };
const question = { setupIds: wet.setups.map(({ id }) => id), of: { heightMetres: HEIGHT } };

const before = performance.now();
const answer = clearGround(dry, question);
const first = performance.now() - before;
if ('why' in answer) throw new Error(answer.why);
const { ground } = answer;
const squares = ground.columns * ground.rows;
const whole = medianMs(3, () => clearGround(dry, question));
const apart = medianMs(3, () => {
  for (const { id } of dry.setups) clearGround(dry, { ...question, setupIds: [id] });
});
const mirrored = medianMs(3, () => clearGround(wet, question));

const [setup] = dry.setups;
const tried = standsOn(dry, ground, HEIGHT, [
  { square: ground.states.findIndex((state) => state > 0), headingDegrees: 0, off: [0, 0] },
]);
const start = performance.now();
setupReport(tried, setup);
const byReport = (performance.now() - start) * squares * dry.setups.length;

// What a step of a drag costs: all setups coarse, for a camera that was moved a little.
const nudged = (metres: number) => {
  const [first, ...others] = dry.setups;
  const keys = first.move.keys.map((key) => ({
    ...key,
    position: [key.position[0] + metres, key.position[1], key.position[2]] as typeof key.position,
  }));
  return { ...dry, setups: [{ ...first, move: { ...first.move, keys } }, ...others] };
};
let step = 0;
const dragged = medianMs(5, () => {
  step += 0.01;
  clearGround(nudged(step), { ...question, stepMetres: 1 });
});
const limits = medianMs(3, () => {
  inOneGo(heightLimitSteps(dry, { setupIds: question.setupIds }));
});
const spot: [number, number] = [ground.corner[0] + 12, ground.corner[1] + 9];
const read = medianMs(3, () => groundAt(dry, question, spot));

const counted = new Map<string, number>();
let stands = 0;
let wrong = 0;
let early = 0;
const plans = Number(process.env.GROUND_PLANS ?? 6);
for (let seed = 1; seed <= plans; seed += 1) {
  for (const plan of [movingPlan(seed), randomPlan(seed)]) {
    for (const { state, verdict } of tryGround(plan, 1.3 + (seed % 5) * 0.5, 25, seed, false)) {
      stands += 1;
      const order = ['clear', 'close', 'covered', 'mirrored', 'showing'];
      if (order.indexOf(verdict) > order.indexOf(state)) wrong += 1;
      if (state === 'showing' && verdict === 'clear') early += 1;
      counted.set(`${state}, ${verdict}`, (counted.get(`${state}, ${verdict}`) ?? 0) + 1);
    }
  }
}
const rows: Row[] = [
  {
    what: `${ground.columns} × ${ground.rows} squares of ${ground.stepMetres} m, 20 moves, one core`,
    reach: '1000 ms',
    reached: `${ms(whole)}, the first time ${ms(first)}`,
  },
  { what: 'each setup by itself, where no other has seen a square yet', reach: '', reached: ms(apart) },
  { what: 'all on a wet deck, mirrored as well', reach: '', reached: ms(mirrored) },
  { what: 'a step of a drag: the same in squares of 1 m', reach: '', reached: ms(dragged) },
  { what: 'how tall a stand may be, on every square', reach: '', reached: ms(limits) },
  { what: 'who sees one square, and when', reach: '', reached: ms(read) },
  {
    what: 'a report for each square and setup, from one of them',
    reach: '',
    reached: `${(byReport / 3_600_000).toFixed(0)} hours, ${Math.round(byReport / whole).toLocaleString('en')} times as long`,
  },
  { what: `of ${stands} stands, worse in the report than their square`, reach: '0', reached: `${wrong}` },
  {
    what: 'clear in the report on a square called showing',
    reach: '1 %',
    reached: `${((100 * early) / stands).toFixed(1)} %`,
  },
];
printTable(rows);
console.log(
  `  squares for all twenty: ${GROUND_STATES.map((name, code) => `${name} ${ground.states.filter((each) => each === code).length}`).join(', ')}`,
);
console.log(`  square, report: ${[...counted].map(([pair, count]) => `${pair} ${count}`).join('; ')}`);
