import { failure, type Result } from './result';

/** What is wrong with a typed value: what was found, what was expected; `sentence` says both in one line. */
export interface UnitFault {
  readonly found: string;
  readonly expected: string;
  readonly sentence: string;
}

/** So many letters of what was typed are quoted: the sentence stands beside its field, where there is little room. */
const LONGEST_TYPED = 40;

/** The fault of a text that is not what was asked for, such as `"3 m wide" is not a length: type …`. */
export function notA(what: string, text: string, expected: string): Result<never, UnitFault> {
  const trimmed = text.trim();
  const short = trimmed.length > LONGEST_TYPED ? `${trimmed.slice(0, LONGEST_TYPED)}…` : trimmed;
  const found = short === '' ? 'nothing' : JSON.stringify(short);
  const problem = short === '' ? `There is no ${what}` : `${found} is not a ${what}`;
  return failure([{ found, expected, sentence: `${problem}: type ${expected}.` }]);
}
