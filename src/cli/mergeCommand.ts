import {
  type Choices,
  type Difference,
  differencesOf,
  suggestedChoices,
} from '../core/plan/merge/differences';
import { type MergedPlan, mergePlans } from '../core/plan/merge/mergePlans';
import type { Plan } from '../core/plan/schema/plan';
import { serialisePlan } from '../core/plan/serialise';
import { type Compared, compared } from '../core/report/merge/changes';
import {
  differenceLine,
  differenceWords,
  noteSentence,
  SECTIONS,
} from '../core/report/merge/differenceWords';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { isLink, planInLink } from './openLink';
import { refusePlanItself, writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { readPlan } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

/** A plan out of a file, or out of a link, of which `say` hears what it left out. @throws CommandFault with a line for each thing that is wrong */
function planOf(word: string, say: (sentence: string) => void): Plan {
  if (word === '-' || !isLink(word)) return readPlan(word);
  const { plan, leftOut } = planInLink(word);
  for (const sentence of leftOut) say(sentence);
  return plan;
}

function takenOf(words: Words): 'mine' | 'theirs' | null {
  const take = words.valueOf('take');
  if (take === null || take === 'mine' || take === 'theirs') return take;
  throw new CommandFault(`--take: found ${JSON.stringify(take)}, expected mine or theirs.`);
}

/** The document of `--json`. */
function documentOf(
  differences: readonly Difference[],
  choices: Choices,
  { plan, notes }: MergedPlan,
  of: Compared,
): unknown {
  return {
    standclearMerge: 1,
    title: plan.title,
    differences: differences.map((difference) => ({
      key: difference.key,
      standing: difference.standing,
      choice: choices.get(difference.key) ?? null,
      ...differenceWords(difference, of),
    })),
    notes: notes.map((note) => ({ kind: note.kind, sentence: noteSentence(note, of) })),
  };
}

const SIGNS: Readonly<Record<Difference['standing'], string>> = {
  conflict: '!',
  theirs: '+',
  both: '+',
  mine: ' ',
  open: '?',
};

function print(differences: readonly Difference[], of: Compared, terminal: Terminal): void {
  const said = differences.map((difference) => ({ difference, words: differenceWords(difference, of) }));
  for (const section of SECTIONS) {
    const under = said.filter(({ words }) => words.section === section);
    if (under.length === 0) continue;
    printLine(terminal.out, section);
    for (const { difference, words } of under)
      printLine(terminal.out, plainText(`  ${SIGNS[difference.standing]} ${differenceLine(words)}`));
  }
}

/**
 * `standclear merge MINE THEIRS`: in what two plans differ, and the plan that they make. Where it is not known what both
 * began with, nothing of theirs is taken unless `--take theirs` says so.
 * @returns 1 where both changed the same and nothing says whose is taken; then nothing is written
 */
export function mergeCommand(words: Words, terminal: Terminal): ExitCode {
  const take = takenOf(words);
  const out = words.valueOf('out');
  const begun = words.valueOf('base');
  if (out !== null)
    for (const file of [words.planFile, words.second, begun])
      if (file !== null) refusePlanItself('out', out, file);
  const say = (sentence: string): void => printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  const [mine, theirs] = [planOf(words.planFile, say), planOf(words.second, say)];
  const base = begun === null ? null : planOf(begun, say);
  const differences = differencesOf(mine, theirs, base);
  // Without what both began with, who takes theirs takes all of it.
  const choices: Choices =
    base === null && take === 'theirs'
      ? new Map(differences.map(({ key }) => [key, 'theirs']))
      : suggestedChoices(differences, take);
  const conflicts = differences.filter(({ key }) => !choices.has(key)).length;
  const merged = mergePlans(mine, theirs, choices, base);
  const of = compared(mine, theirs, 'm');
  if (words.has('json')) {
    const text = `${JSON.stringify(documentOf(differences, choices, merged, of), null, 2)}\n`;
    terminal.out.write(terminal.out.isTTY ? escapedForJson(text) : text);
  } else if (differences.length === 0) printLine(terminal.out, 'Nothing differs.');
  else print(differences, of, terminal);
  for (const note of merged.notes) say(noteSentence(note, of));
  if (conflicts > 0) {
    say(
      `Both changed ${conflicts === 1 ? 'one thing' : `${conflicts} things`}, marked !: say --take mine or --take theirs. Nothing was written.`,
    );
    return EXIT.checkFailed;
  }
  if (base === null && take === null && differences.length > 0)
    say(
      'Without --base nobody knows who changed what: nothing of theirs is taken unless --take theirs says so.',
    );
  if (out !== null) writeOut(out, new TextEncoder().encode(serialisePlan(merged.plan)));
  return EXIT.fine;
}
