import { withRemedy } from '../core/clearance/remedies/remedyEdits';
import { solveSteps } from '../core/clearance/solve/solve';
import type { SolveAnswer, SolveQuestion } from '../core/clearance/solve/types';
import type { Plan } from '../core/plan/schema/plan';
import { serialisePlan } from '../core/plan/serialise';
import { formatLength } from '../core/units/lengths';
import { readNumber } from '../core/units/numbers';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { holdModels } from './holdModels';
import { refusePlanItself, writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { withProgress } from './progress';
import { readPlan } from './readPlan';
import { readSetups } from './readSetups';
import { setInColumns } from './table/columns';
import { intrudes } from './table/wishes';
import { printLine, type Terminal, widthOf } from './terminal';
import type { Words } from './words';

/** How far lamps may change where nobody says. */
const LEVEL_STOPS = 0.5;
const ANGLE_DEGREES = 15;

/** A number behind an option, from 0 to a most. @throws CommandFault if it is none */
function numberOf(words: Words, option: string, most: number, otherwise: number): number {
  const text = words.valueOf(option);
  if (text === null) return otherwise;
  const read = readNumber(text, []);
  if (!read || !(read.value >= 0 && read.value <= most))
    throw new CommandFault(
      `--${option}: found ${JSON.stringify(text)}, expected a number from 0 to ${most}.`,
    );
  return read.value;
}

/** The search with progress. @throws CommandFault with the sentence where it is refused */
function solveFor(plan: Plan, question: SolveQuestion, terminal: Terminal): SolveAnswer {
  const answer = withProgress(solveSteps(plan, question), terminal, (progress, { share, cleared, setups }) =>
    progress.say(`Solving: ${Math.floor(100 * share)} %, ${cleared} of ${setups} setups clear`),
  );
  if (answer.outcome === 'refused') throw new CommandFault(answer.sentence);
  return answer;
}

const spotWords = ([x, z]: readonly [number, number]): string =>
  `${formatLength(x, 'm', { decimals: 2 })}, ${formatLength(z, 'm', { decimals: 2 })}`;

/** A row for each thing that changes: what it is, what becomes of it, where it stands and stood. */
function changeLines({ best }: SolveAnswer, width: number): readonly string[] {
  if (!best) return [];
  const rows = best.items.map(({ label, words, from, to }) => [
    plainText(label),
    plainText(words),
    spotWords(from),
    spotWords(to),
  ]);
  return setInColumns(
    [{ leastWidth: 8 }, { leastWidth: 12 }, { spare: true }, {}],
    [['item', 'change', 'from x, z', 'to x, z'], ...rows],
    width,
  );
}

/** `standclear solve`: what changes as a table or JSON, and the plan so changed, which is read once more as a whole. */
export async function solveCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const out = words.valueOf('out') ?? '';
  refusePlanItself('out', out, words.planFile);
  const tolerance = {
    levelStops: numberOf(words, 'stops', 20, LEVEL_STOPS),
    angleDegrees: numberOf(words, 'degrees', 180, ANGLE_DEGREES),
  };
  const plan = readPlan(words.planFile);
  const models = await holdModels(plan, words.planFile, terminal);
  const named = words.valuesOf('move').flatMap((row) => row.split(',').map((id) => id.trim()));
  const movable = words.has('move') ? { movable: named } : {};
  const seen =
    plan.setups.length > 0 ? (await readSetups(plan, models, plan.setups, null, terminal)).setups : [];
  const answer = solveFor(plan, { tolerance, ...movable, seen }, terminal);
  const after = answer.best ? withRemedy(plan, answer.best) : plan;
  const report = answer.best
    ? await readSetups(after, models, after.setups, null, terminal)
    : { setups: seen };
  const left = report.setups.flatMap(({ id, items }) =>
    items
      .filter((item) => intrudes(item) && !item.accepted)
      .map((item) => ({ setupId: id, itemId: item.id })),
  );
  writeOut(out, new TextEncoder().encode(serialisePlan(after)));
  if (words.has('json')) {
    const document = { standclearSolve: 1, title: plan.title, ...answer, left };
    terminal.out.write(escapedForJson(`${JSON.stringify(document, null, 2)}\n`));
  } else {
    for (const line of changeLines(answer, widthOf(terminal.out))) printLine(terminal.out, line);
    if (answer.best) printLine(terminal.out, '');
    printLine(terminal.out, plainText(answer.sentence));
    const many = left.length === 1 ? '1 finding is' : `${left.length} findings are`;
    if (left.length > 0) printLine(terminal.out, `By the report of the plan that is written, ${many} left.`);
  }
  return left.length === 0 && answer.outcome !== 'none' ? EXIT.fine : EXIT.checkFailed;
}
