import { nightOf } from '../core/night/nightOf';
import { packingOf } from '../core/night/packing/packingOf';
import type { Plan } from '../core/plan/schema/plan';
import { withNames } from '../core/plan/withNames';
import type { Report } from '../core/report/types';
import { nightDocument } from '../exchange/night/nightDocument';
import { reportCsv } from '../exchange/reportCsv';
import { EXIT, type ExitCode } from './exitCodes';
import { holdModels } from './holdModels';
import { chosenSetups, coveringSetups, readInstant } from './instant';
import { escapedForJson, plainText } from './plainText';
import { readPlan } from './readPlan';
import { readSetups } from './readSetups';
import { inkFor } from './table/ink';
import { reportTable } from './table/reportTable';
import { printLine, type Terminal, widthOf } from './terminal';
import type { Words } from './words';

/** The report with the night in the order that the plan has, which is worked out of more than a report is. */
function withNight(plan: Plan, report: Report): object {
  const night = nightOf(plan);
  const extras = { packing: packingOf(plan, night), suggested: null, darkFrom: null };
  return { ...report, night: nightDocument(plan, night, extras) };
}

/** `standclear report`: the report as a table, as JSON or as CSV. */
export async function reportCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const at = words.valueOf('at');
  const seconds = at === null ? null : readInstant(at);
  const plan = withNames(readPlan(words.planFile));
  const models = await holdModels(plan, words.planFile, terminal);
  const ids = words.valuesOf('setup');
  let setups = chosenSetups(plan, ids);
  if (seconds !== null && setups.length > 0) {
    const { covering, others } = coveringSetups(plan, setups, seconds, ids.length > 0);
    setups = covering;
    if (others.length > 0) {
      const names = others.map((setup) => setup.id).join(', ');
      printLine(terminal.err, `standclear: left out, since they do not cover ${seconds} s: ${names}.`);
    }
  }
  const report = await readSetups(plan, models, setups, seconds, terminal);
  if (words.has('json'))
    terminal.out.write(escapedForJson(`${JSON.stringify(withNight(plan, report), null, 2)}\n`));
  else if (words.has('csv')) terminal.out.write(reportCsv(report, plainText));
  else {
    for (const line of reportTable(report, plan, widthOf(terminal.out), inkFor(terminal))) {
      printLine(terminal.out, line);
    }
  }
  return EXIT.fine;
}
