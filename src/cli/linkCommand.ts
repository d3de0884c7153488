import type { Plan } from '../core/plan/schema/plan';
import { LinkTooLarge, linkOfPlan, type PlanLink } from '../exchange/link/link';
import { qrOf } from '../exchange/link/qr';
import { qrSvg } from '../exchange/link/qrSvg';
import { addressOf } from './addressOption';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { refusePlanItself, writeOut } from './outFile';
import { plainText } from './plainText';
import { readPlan } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

/** Longer links are cut by some programs that letters are sent with, characters. Source: common practice, no source */
const LONGEST_IN_LETTERS = 2000;

function linkTo(plan: Plan): PlanLink {
  try {
    return linkOfPlan(plan);
  } catch (error) {
    if (error instanceof LinkTooLarge) throw new CommandFault(error.sentence);
    throw error;
  }
}

/** `standclear link`: the plan as a link, alone on a line; what it leaves out is said beside it. */
export function linkCommand(words: Words, terminal: Terminal): ExitCode {
  const typed = words.valueOf('address');
  const address = typed === null ? '' : addressOf(typed);
  const out = words.valueOf('qr');
  if (out !== null) refusePlanItself('qr', out, words.planFile);
  const { fragment, leftOut } = linkTo(readPlan(words.planFile));
  const link = `${address}#${fragment}`;
  const say = (sentence: string): void => printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  if (out !== null) {
    const squares = qrOf(link);
    if (!squares)
      throw new CommandFault(
        `--qr: the link has ${link.length} characters, expected at most 2953, which is what one code holds.`,
      );
    writeOut(out, new TextEncoder().encode(qrSvg(squares)));
  }
  printLine(terminal.out, link);
  say(`The link has ${link.length} characters. Whoever has it can read the whole plan.`);
  for (const sentence of leftOut) say(sentence);
  if (link.length > LONGEST_IN_LETTERS)
    say(
      `Some chat programs cut links above ${LONGEST_IN_LETTERS} characters: send it as a code or the plan as a file there.`,
    );
  return EXIT.fine;
}
