import { readsInTheDark } from '../../src/core/light/readsInTheDark';
import { highlightsOver } from '../../src/core/light/wetFloor';
import { lightOf } from '../../src/core/report/light/lightOf';
import { readsOver } from '../../src/core/report/light/readsOver';
import { setupReport } from '../../src/core/report/setupReport';
import { inOneGo } from '../../src/core/units/steps';
import { DEMO, readPlan } from '../plans/readPlan';
import { naiveDark } from './naiveDark';
import { medianMs, ms, printTable, times } from './table';

/**
 * What reads in the dark over the demo's whole night, all setups and their spans, beside a double loop over lamps and
 * triangles with three's ray caster that answers the same; and what the light of its first setup takes.
 */
const demo = readPlan(DEMO);
const [setup] = demo.setups;
const night = demo.setups.map((each) => ({ setup: each, seen: setupReport(demo, each) }));

/** The verdicts of a setup over its span. */
function verdictsOf({ setup: each, seen }: (typeof night)[number]) {
  return inOneGo(readsOver(demo, each, seen));
}

/** Every instant of the night at which items are asked: each at its worst, and what is lost then at all its others. */
const questions = night.flatMap((of) => {
  const byInstant = new Map<number, string[]>();
  for (const { itemId, seconds, verdict } of verdictsOf(of)) {
    const item = of.seen.items.find(({ id }) => id === itemId);
    if (!item) continue;
    const wasLost = verdict === 'lost in the dark' || seconds !== item.worstAtSeconds;
    const others = wasLost ? item.spans.flatMap(([from, to]) => [from, (from + to) / 2, to]) : [];
    for (const at of new Set([item.worstAtSeconds, ...others]))
      byInstant.set(at, [...(byInstant.get(at) ?? []), itemId]);
  }
  return [...byInstant].map(([seconds, ids]) => ({ setup: of.setup, seconds, ids }));
});
const items = questions.reduce((sum, { ids }) => sum + ids.length, 0);
const ours = medianMs(3, () => night.forEach((of) => void verdictsOf(of)));

/** The loop takes minutes for the night: it is given some eight of the instants, and its time for an item multiplied. */
const EVERY = Math.max(1, Math.floor(questions.length / 8));
const few = questions.filter((_, k) => k % EVERY === 0);
let [naiveMs, asked, alike, casts, framePixels] = [0, 0, 0, 0, 0];
for (const { setup: each, seconds, ids } of few) {
  const answer = naiveDark(demo, each, seconds, ids);
  const found = readsInTheDark(demo, each, seconds, ids);
  naiveMs += answer.milliseconds;
  casts += answer.casts;
  framePixels += answer.framePixels / few.length;
  asked += ids.length;
  alike += found.filter(
    ({ itemId, verdict }) => (verdict === 'lost in the dark') === answer.lost.has(itemId),
  ).length;
}
const naiveNight = (naiveMs / asked) * items;
/** It is told which pixels show what; a ray through each would find them, at the pace of its own rays. */
const findingMs = (naiveMs / casts) * framePixels * questions.length;

const { seen } = night[0];
const showing = seen.items.filter(({ wish, verdict }) => wish === 'keep out' && verdict === 'showing');
const readAll = () =>
  showing.map(({ id, worstAtSeconds }) => readsInTheDark(demo, setup, worstAtSeconds, [id]));

printTable([
  {
    what: `verdicts in the dark of the demo's whole night: ${night.length} setups, ${items} items at ${questions.length} instants`,
    reach: '',
    reached: ms(ours),
  },
  {
    what: `the same by a double loop with three's ray caster that is told where to look, from ${asked} items, ${casts} rays`,
    reach: '',
    reached: `${ms(naiveNight)}, ${times(naiveNight / ours)}`,
  },
  {
    what: 'and with what shows found by a ray through each pixel, at the pace of those rays',
    reach: '≥ 50 times ours',
    reached: `${ms(naiveNight + findingMs)}, ${times((naiveNight + findingMs) / ours)}`,
  },
  {
    what: 'items that both call lost or both not; the loop knows no sheen and no round members',
    reach: '',
    reached: `${alike} of ${asked}`,
  },
  {
    what: `${showing.length} findings of the demo's first setup, each at its worst instant`,
    reach: '≤ 200 ms',
    reached: ms(medianMs(9, readAll)),
  },
  {
    what: 'highlights of the demo’s first setup over its span',
    reach: '',
    reached: ms(medianMs(3, () => highlightsOver(demo, setup))),
  },
  {
    what: 'all that is said of its light, once it is known what shows',
    reach: '≤ 500 ms',
    reached: ms(medianMs(3, () => lightOf(demo, setup, seen))),
  },
]);
