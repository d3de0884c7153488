import type * as v from 'valibot';

/** What is wrong with a plan: where, what was found, what was expected; `sentence` says all three in one line. */
export interface PlanFault {
  readonly where: string;
  readonly found: string;
  readonly expected: string;
  readonly sentence: string;
}

/** So many letters of what was found are quoted: all of a name, and all of a file's by its fingerprint. */
export const LONGEST_QUOTE = 80;
/** What would break the line, or turn round what stands beside it. */
const UNSEEN = /[\p{Cc}\p{Bidi_Control}\u2028\u2029]/gu;

const shortened = (text: string): string =>
  text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text;

/** Text in which all can be seen: what cannot is told by its number, as JSON does. */
const visible = (text: string): string =>
  text.replace(UNSEEN, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** Shows a found value in a few characters, whatever it is. */
export function quoteFound(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return visible(JSON.stringify(shortened(value)));
  if (Array.isArray(value)) return `a list of ${value.length}`;
  if (value !== null && typeof value === 'object') return 'an object';
  return String(value);
}

/** Makes the fault and its one line. */
export function fault(where: string, found: string, expected: string): PlanFault {
  return { where, found, expected, sentence: `${where}: found ${found}, expected ${expected}.` };
}

type Issue = v.BaseIssue<unknown>;

/** What a person calls the thing, where it says so itself. */
function labelOf(value: unknown): string {
  if (value === null || typeof value !== 'object' || !('label' in value)) return '';
  return typeof value.label === 'string' && value.label !== '' ? quoteFound(value.label) : '';
}

/**
 * The path as a person reads it, named after the innermost thing on it that has a name:
 * `gear[3].heightMetres of "Lamp stand 2"`. A field that should not be there names nothing.
 */
function describePath(
  root: unknown,
  path: readonly { readonly key: unknown }[],
  isLastUnknown: boolean,
): string {
  let text = '';
  let value: unknown = root;
  let name = '';
  for (const [index, { key }] of path.entries()) {
    text +=
      typeof key === 'number' ? `[${key}]` : `${text === '' ? '' : '.'}${visible(shortened(String(key)))}`;
    value = value !== null && typeof value === 'object' ? Reflect.get(value, String(key)) : undefined;
    if (!(isLastUnknown && index === path.length - 1)) name = labelOf(value) || name;
  }
  if (text === '') return 'The plan';
  return name === '' ? text : `${text} of ${name}`;
}

/** Turns one schema issue into a fault. */
export function faultOfIssue(root: unknown, issue: Issue): PlanFault {
  const isUnknown = issue.kind === 'schema' && issue.type === 'strict_object' && issue.expected === 'never';
  const path = (issue.path ?? []) as readonly { readonly key: unknown }[];
  const where = describePath(root, path, isUnknown);
  if (isUnknown) return fault(where, 'a field that a plan does not have', 'it to be left out');
  if (issue.kind === 'schema' && issue.type === 'strict_object') {
    if (issue.received === 'undefined') return fault(where, 'nothing', 'this field to be there');
    return fault(where, quoteFound(issue.input), 'an object');
  }
  if (issue.kind === 'schema' && issue.type === 'array')
    return fault(where, quoteFound(issue.input), 'a list');
  if (issue.kind === 'schema' && issue.type === 'strict_tuple' && issue.expected === 'never') {
    return fault(where, quoteFound(issue.input), 'nothing more in this list');
  }
  return fault(where, quoteFound(issue.input), issue.message);
}
