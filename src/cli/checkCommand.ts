import { withNames } from '../core/plan/withNames';
import { findingSentence } from '../core/report/sentences';
import type { JudgedSetup } from '../core/report/types';
import { EXIT, type ExitCode } from './exitCodes';
import { holdModels } from './holdModels';
import { chosenSetups } from './instant';
import { plainText } from './plainText';
import { readPlan } from './readPlan';
import { readSetups } from './readSetups';
import { inkFor } from './table/ink';
import { intrudes, neverShown, neverShownWords, reliesOnTheDark } from './table/wishes';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;
const items = (count: number): string => counted(count, 'item', 'items');
const are = (count: number): string => (count === 1 ? 'is' : 'are');

/** How an item that is lost in the dark reads there: the words of its light. */
const darkWords = ({ light }: JudgedSetup, itemId: string): string =>
  light.sentences.find(({ about, itemId: id }) => about === 'dark' && id === itemId)?.text ??
  'is lost in the dark.';

/**
 * `standclear check`: one sentence for each wish that the plan breaks, a warning for each that it keeps only because
 * something is lost in the dark, what is accepted with its reason, which breaks none, and a last line that says how it
 * stands. With --strict a warning breaks a wish too.
 */
export async function checkCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const plan = withNames(readPlan(words.planFile));
  const models = await holdModels(plan, words.planFile, terminal);
  const report = await readSetups(plan, models, chosenSetups(plan, words.valuesOf('setup')), null, terminal);
  const ink = inkFor(terminal);
  const say = (name: string, text: string): void => {
    printLine(terminal.out, `${ink.strong(plainText(name))}: ${plainText(text)}`);
  };

  let findings = 0;
  let accepted = 0;
  const seen = new Set<string>();
  const dark = new Set<string>();
  for (const setup of report.setups) {
    for (const item of setup.items.filter(intrudes)) {
      const { name, text } = findingSentence(item, setup, 'm');
      if (item.accepted) {
        say(`Accepted: ${setup.label}, ${name}`, `${text} It may show: ${item.accepted.reason}`);
        accepted += 1;
        continue;
      }
      say(`${setup.label}, ${name}`, text);
      findings += 1;
      seen.add(item.id);
    }
    for (const { id, label } of setup.items.filter((item) => reliesOnTheDark(item) && !item.accepted)) {
      say(`Warning: ${setup.label}, ${label}`, darkWords(setup, id));
      dark.add(id);
    }
  }
  const unseen = neverShown(report);
  const missing = unseen.filter(({ verdict }) => verdict !== 'lost in the dark');
  const lost = unseen.filter(({ verdict }) => verdict === 'lost in the dark');
  for (const item of missing) say(item.label, `it ${neverShownWords(item)}`);
  for (const item of lost) say(`Warning: ${item.label}`, `it ${neverShownWords(item)}`);

  const setups = counted(report.setups.length, 'setup', 'setups');
  const warned = [
    ...(dark.size > 0
      ? [`${items(dark.size)} that should keep out ${are(dark.size)} only lost in the dark`]
      : []),
    ...(lost.length > 0 ? [`${items(lost.length)} that must show ${are(lost.length)} lost in the dark`] : []),
  ];
  const broken = [
    ...(findings > 0
      ? [
          `${items(seen.size)} that should keep out can be seen, ${counted(findings, 'finding', 'findings')} in ${setups}`,
        ]
      : []),
    ...(missing.length > 0
      ? [`${items(missing.length)} that must show never ${missing.length === 1 ? 'does' : 'do'}`]
      : []),
    ...(words.has('strict') ? warned : []),
  ];
  const allowed = accepted > 0 ? [`${counted(accepted, 'finding', 'findings')} accepted`] : [];
  const notes = [...allowed, ...warned.map((text) => `warning: ${text}`)];
  if (broken.length > 0) {
    const also = words.has('strict') ? allowed : notes;
    printLine(terminal.out, `Not clear: ${[...broken, ...also].join('; ')}.`);
    return EXIT.checkFailed;
  }
  const what = accepted > 0 ? 'nothing else that should keep out' : 'nothing that should keep out';
  const clear = `Clear: ${what} can be seen in ${setups}`;
  printLine(terminal.out, `${[clear, ...notes].join('; ')}.`);
  return EXIT.fine;
}
