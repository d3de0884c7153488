import { findingSentence } from '../core/report/sentences';
import { EXIT, type ExitCode } from './exitCodes';
import { holdModels } from './holdModels';
import { chosenSetups } from './instant';
import { plainText } from './plainText';
import { readPlan } from './readPlan';
import { readSetups } from './readSetups';
import { inkFor } from './table/ink';
import { intrudes, neverShown } from './table/wishes';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

/** `standclear check`: one sentence for each wish that the plan breaks, and a last line that says how it stands. */
export async function checkCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const plan = readPlan(words.planFile);
  const models = await holdModels(plan, words.planFile, terminal);
  const report = await readSetups(plan, models, chosenSetups(plan, words.valuesOf('setup')), null, terminal);
  const ink = inkFor(terminal);
  const say = (name: string, text: string): void => {
    printLine(terminal.out, `${ink.strong(plainText(name))}: ${plainText(text)}`);
  };

  let findings = 0;
  const items = new Set<string>();
  for (const setup of report.setups) {
    for (const item of setup.items.filter(intrudes)) {
      const { name, text } = findingSentence(item, setup, 'm');
      say(`${setup.label}, ${name}`, text);
      findings += 1;
      items.add(item.id);
    }
  }
  const missing = neverShown(report);
  for (const item of missing) say(item.label, 'it must show, and never does.');

  const setups = counted(report.setups.length, 'setup', 'setups');
  if (findings === 0 && missing.length === 0) {
    printLine(terminal.out, `Clear: nothing that should keep out can be seen in ${setups}.`);
    return EXIT.fine;
  }
  const lines: string[] = [];
  if (findings > 0) {
    const seen = `${counted(items.size, 'item', 'items')} that should keep out can be seen`;
    lines.push(`${seen}, ${counted(findings, 'finding', 'findings')} in ${setups}`);
  }
  if (missing.length > 0) lines.push(`${counted(missing.length, 'item', 'items')} that must show never does`);
  printLine(terminal.out, `Not clear: ${lines.join('; ')}.`);
  return EXIT.checkFailed;
}
