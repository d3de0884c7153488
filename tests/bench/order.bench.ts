import { nightOf } from '../../src/core/night/nightOf';
import { scheduleOf } from '../../src/core/night/order/schedule';
import { packingOf } from '../../src/core/night/packing/packingOf';
import { suggestSteps } from '../../src/core/night/suggest/suggest';
import { isBetter, Valuer, type Worth } from '../../src/core/night/suggest/worth';
import { inOneGo } from '../../src/core/units/steps';
import { drawFrom } from '../plans/draw';
import { DEMO, readPlan } from '../plans/readPlan';
import { someWork } from '../plans/someWork';
import { medianMs, ms, printTable, times } from './table';

/** The order of a night: the demo's timed and packed, and the order that costs least beside trying every order. */
const demo = readPlan(DEMO);
/** A place of its own, so that nothing is known of its sky. */
const anew = () => ({ ...demo, place: { ...demo.place } });

/** The best of all orders, one after the other. */
function bestOfAll(valuer: Valuer, left: readonly number[], done: readonly number[] = []): Worth | null {
  if (left.length === 0) return valuer.worth(done);
  let best: Worth | null = null;
  for (const job of left) {
    const worth = bestOfAll(
      valuer,
      left.filter((each) => each !== job),
      [...done, job],
    );
    if (worth && (!best || isBetter(worth, best))) best = worth;
  }
  return best;
}

const free = (count: number) => ({ ...someWork(count, drawFrom(count)), demands: [] });
const nine = free(9);
const twelve = free(12);
const forty = free(40);
const every = medianMs(1, () => void bestOfAll(new Valuer(nine), nine.order));
const best = medianMs(3, () => void inOneGo(suggestSteps(nine)));

const rows: readonly (readonly [string, number])[] = [
  ['the demo timed, sky and all', medianMs(5, () => void nightOf(anew()))],
  ['the demo packed', medianMs(3, () => void packingOf(demo))],
  ['one order of 40 setups', medianMs(20, () => void scheduleOf(forty))],
  ['the best order of 9 setups', best],
  ['the best order of 12 setups', medianMs(1, () => void inOneGo(suggestSteps(twelve)))],
  ['a good order of 40 setups', medianMs(1, () => void inOneGo(suggestSteps(forty)))],
];
printTable([
  ...rows.map(([what, value]) => ({ what, reach: '', reached: ms(value) })),
  { what: 'every order of 9 setups, beside it', reach: '', reached: `${ms(every)}, ${times(every / best)}` },
]);
