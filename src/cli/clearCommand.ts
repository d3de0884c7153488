import { clearGroundSteps } from '../core/clearance/ground/clearGround';
import { type ClearGround, GROUND_STATES, type GroundQuestion } from '../core/clearance/ground/types';
import { groundSentence } from '../core/clearance/ground/words';
import type { Plan } from '../core/plan/schema/plan';
import { groundPng } from '../exchange/groundPng';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { holdModels } from './holdModels';
import { chosenSetups, typedSetups } from './instant';
import { metresOf } from './lengthOption';
import { refusePlanItself, writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { withProgress } from './progress';
import { readPlan } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

/** The ids of the setups that were named, in the plan's order. @throws CommandFault where the plan has none */
function setupIdsOf(plan: Plan, words: Words): readonly string[] {
  if (plan.setups.length === 0) throw new CommandFault('This plan has no setups: expected at least one.');
  return chosenSetups(plan, typedSetups(words)).map(({ id }) => id);
}

/** Clear ground with progress. @throws CommandFault with the sentence where there is no answer */
function groundFor(plan: Plan, question: GroundQuestion, terminal: Terminal): ClearGround {
  const { length } = question.setupIds;
  const answer = withProgress(clearGroundSteps(plan, question), terminal, (progress, share) =>
    progress.tell(share * length, length),
  );
  if ('why' in answer) throw new CommandFault(answer.why);
  return answer.ground;
}

/** Clear ground as a document: lists of rows from the lowest z, each from the lowest x; null for what there is not. */
function groundDocument(plan: Plan, ground: ClearGround, sentence: string): object {
  const { columns, rows, stepMetres, corner, setupIds, thing } = ground;
  const inRows = <Value>(valueAt: (square: number) => Value): Value[][] =>
    Array.from({ length: rows }, (_, row) =>
      Array.from({ length: columns }, (__, column) => valueAt(row * columns + column)),
    );
  const orNull = (value: number): number | null => (Number.isFinite(value) ? value : null);
  return {
    standclearGround: 1,
    title: plan.title,
    sentence,
    thing,
    setups: setupIds,
    corner,
    stepMetres,
    columns,
    rows,
    states: inRows((square) => GROUND_STATES[ground.states[square]]),
    worstSetup: inRows((square) => setupIds[ground.worstSetup[square]] ?? null),
    worstSeconds: inRows((square) => orNull(ground.worstSeconds[square])),
    limitMetres: inRows((square) => orNull(ground.limitMetres[square])),
  };
}

/** `standclear clear`: a sentence, and the squares as JSON or as a picture. */
export async function clearCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const heightMetres = metresOf('height', words.valueOf('height') ?? '');
  const step = words.valueOf('step');
  const stepMetres = step === null ? undefined : metresOf('step', step);
  const file = words.valueOf('png');
  if (file !== null) refusePlanItself('png', file, words.planFile);
  const plan = readPlan(words.planFile);
  await holdModels(plan, words.planFile, terminal);
  const setupIds = setupIdsOf(plan, words);
  const question = { setupIds, of: { heightMetres }, ...(stepMetres !== undefined && { stepMetres }) };
  const ground = groundFor(plan, question, terminal);
  const sentence = groundSentence(plan, ground);
  if (words.has('json')) {
    // A row of squares a line: to be read by programs, and still by people.
    const text = JSON.stringify(groundDocument(plan, ground, sentence), null, 1);
    terminal.out.write(escapedForJson(`${text.replace(/\n {3,}/g, '').replace(/\n {2}\]/g, ']')}\n`));
    return EXIT.fine;
  }
  if (file !== null) {
    const png = groundPng(ground, {
      Title: plainText(plan.title).slice(0, 200),
      Description: plainText(sentence),
    });
    writeOut(file, png);
  }
  printLine(terminal.out, plainText(sentence));
  return EXIT.fine;
}
