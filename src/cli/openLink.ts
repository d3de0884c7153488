import { readFileSync } from 'node:fs';
import { serialisePlan } from '../core/plan/serialise';
import { type LinkReading, planOfLink } from '../exchange/link/link';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { fileProblem } from './fileProblem';
import { writeOut } from './outFile';
import { escapedForJson, plainText } from './plainText';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

/** Whether a word is a link and no file: an address, its part behind the `#`, or `-` for one on the input. */
export const isLink = (word: string): boolean =>
  word === '-' || /^https?:/i.test(word) || /(^|#)[1-9][\w-]{20,}$/.test(word);

function typedLink(word: string): string {
  if (word !== '-') return word;
  try {
    return readFileSync(0, 'utf8').trim();
  } catch (error) {
    throw new CommandFault(`Cannot read the link from the input: ${fileProblem(error)}.`);
  }
}

/** A link that gave a plan, with the sentences on what it has left out. */
type LinkedPlan = Extract<LinkReading, { readonly ok: true }>;

/** The plan of a link: a whole address, or what follows its `#`. @throws CommandFault for a link that gives none */
export function planInLink(link: string): LinkedPlan {
  const sign = link.indexOf('#');
  const isAddress = sign < 0 && /^https?:/i.test(link);
  const read = planOfLink(isAddress ? '' : link.slice(sign + 1));
  if (!read.ok) throw new CommandFault(read.sentence);
  return read;
}

/** `standclear open LINK`: the plan of a link, printed or as a file. @throws CommandFault for a link that gives none */
export function openLink(words: Words, terminal: Terminal): ExitCode {
  const read = planInLink(typedLink(words.planFile));
  const text = serialisePlan(read.plan);
  const out = words.valueOf('out');
  if (out === null) terminal.out.write(terminal.out.isTTY ? escapedForJson(text) : text);
  else writeOut(out, new TextEncoder().encode(text));
  for (const sentence of read.leftOut) printLine(terminal.err, `standclear: ${plainText(sentence)}`);
  return EXIT.fine;
}
