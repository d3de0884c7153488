import { quoteFound } from '../../core/plan/faults';
import { failure, type Result } from '../../core/units/result';

/** Why a file could not be read: which line, what stands there, what was expected; `sentence` says all in one line. */
export interface Lm63Fault {
  /** Counted from 1; null where it is the file as a whole. */
  readonly line: number | null;
  readonly found: string;
  readonly expected: string;
  readonly sentence: string;
}

/** Makes the fault and its one line. */
export function lineFault(line: number | null, found: string, expected: string): Result<never, Lm63Fault> {
  const where = line === null ? 'The file' : `Line ${line}`;
  return failure([{ line, found, expected, sentence: `${where}: found ${found}, expected ${expected}.` }]);
}

/** Something of the file's own text, short, in quotes and without characters that no line should hold. */
export const quoted = (text: string): string => quoteFound(plain(text));

/** A text of the file on one line, without control characters and marks of direction. */
export const plain = (text: string): string =>
  text.replace(/[\s\p{Cc}\p{Cf}\u2028\u2029\ufffd]+/gu, ' ').trim();
