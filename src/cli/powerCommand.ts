import { serialisePlan } from '../core/plan/serialise';
import { withNames } from '../core/plan/withNames';
import { connectAll } from '../core/power/connect/connectAll';
import { connectSentences } from '../core/report/power/connectSentences';
import { powerReport } from '../core/report/power/powerReport';
import { readNumber } from '../core/units/numbers';
import { powerCsv } from '../exchange/powerCsv';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { refusePlanItself, writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { readPlan } from './readPlan';
import { inkFor } from './table/ink';
import { powerTable } from './table/powerTable';
import { printLine, type Terminal, widthOf } from './terminal';
import type { Words } from './words';

const MOST_HOURS = 48;

/** The hours that were typed behind --hours. @throws CommandFault if they are no number of hours up to two days */
function readHours(text: string): number {
  const read = readNumber(text, ['h', 'hour', 'hours']);
  if (!read || !(read.value > 0) || read.value > MOST_HOURS)
    throw new CommandFault(
      `--hours: found ${JSON.stringify(text)}, expected hours above 0 and up to ${MOST_HOURS}, such as 9.5.`,
    );
  return read.value;
}

/** `standclear power`: what is plugged into what, as a table, JSON or CSV; with --connect, cords for all that has none. */
export function powerCommand(words: Words, terminal: Terminal): ExitCode {
  const typed = words.valueOf('hours');
  const hours = typed === null ? null : readHours(typed);
  const out = words.valueOf('connect');
  if (out !== null) refusePlanItself('connect', out, words.planFile);
  const read = readPlan(words.planFile);
  const connected = out === null ? null : connectAll(read);
  const plan = withNames(connected?.plan ?? read);
  if (out !== null && connected) {
    writeOut(out, new TextEncoder().encode(serialisePlan(connected.plan)));
    for (const sentence of connectSentences(read, connected))
      printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  }
  const power = powerReport(plan, hours);
  if (words.has('json')) {
    const document = { standclearPower: 1, title: plan.title, ...power };
    terminal.out.write(escapedForJson(`${JSON.stringify(document, null, 2)}\n`));
  } else if (words.has('csv')) terminal.out.write(powerCsv(power, plainText));
  else
    for (const line of powerTable(plan, power, widthOf(terminal.out), inkFor(terminal)))
      printLine(terminal.out, line);
  return EXIT.fine;
}
