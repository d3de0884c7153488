import { readFileSync } from 'node:fs';
import { readsInTheDark } from '../../src/core/light/readsInTheDark';
import { highlightsOver } from '../../src/core/light/wetFloor';
import { parsePlanText } from '../../src/core/plan/parse';
import { setupReport } from '../../src/core/report/setupReport';
import { medianMs, ms, printTable } from './table';

/** What reads in the dark of all that shows against its wish in the demo's first setup, and its highlights. */
const parsed = parsePlanText(readFileSync('assets/loft-night.plan.json', 'utf8'));
if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
const demo = parsed.value;
const [setup] = demo.setups;
const showing = setupReport(demo, setup).items.filter(
  ({ wish, verdict }) => wish === 'keep out' && verdict === 'showing',
);
const readAll = () =>
  showing.map(({ id, worstAtSeconds }) => readsInTheDark(demo, setup, worstAtSeconds, [id]));
readAll();

printTable([
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
]);
