/** A position to a ten-thousandth of a centimetre, finer than 32 bits have it ten metres from the middle of a roof. */
const POSITION_STEPS = 1e4;
/** A direction's share, or a factor. */
const SHARE_STEPS = 1e6;

/** A number rounded to steps, as text; never a minus before nothing. */
const rounded = (value: number, steps: number): string => String(Math.round(value * steps) / steps + 0);

/** A length of the stage, centimetres, as text. */
export const lengthText = (centimetres: number): string => rounded(centimetres, POSITION_STEPS);

/** A share, an angle or a factor as text. */
export const numberText = (value: number): string => rounded(value, SHARE_STEPS);

/** Numbers as a tuple: `(1, 2, 3)`. */
export const tuple = (numbers: readonly number[], text: (value: number) => string = numberText): string =>
  `(${numbers.map(text).join(', ')})`;

/** Numbers as an array of tuples of three. */
export function triples(numbers: ArrayLike<number>, text: (value: number) => string): string {
  const parts: string[] = [];
  for (let k = 0; k < numbers.length; k += 3)
    parts.push(`(${text(numbers[k])}, ${text(numbers[k + 1])}, ${text(numbers[k + 2])})`);
  return `[${parts.join(', ')}]`;
}

/**
 * A text in quotes: what would end it early is escaped, control characters and those that turn its direction become
 * spaces. Joiners stay: scripts need them.
 */
export function quoted(text: string): string {
  const plain = text
    .replaceAll(/[\p{Cc}\p{Cs}\p{Bidi_Control}\u2028\u2029]/gu, ' ')
    .replaceAll(/[\\"]/g, (sign) => `\\${sign}`);
  return `"${plain}"`;
}

/** Gives each name an identifier of its own within one prim: letters, digits and underscores, no digit first. */
export class Identifiers {
  private readonly given = new Set<string>();

  /** The identifier for a name; another one each time. */
  of(name: string): string {
    const plain = name.replaceAll(/[^A-Za-z0-9_]/g, '_').slice(0, 80);
    const stem = /^[A-Za-z_]/.test(plain) ? plain : `_${plain}`;
    let identifier = stem;
    for (let count = 2; this.given.has(identifier); count += 1) identifier = `${stem}_${count}`;
    this.given.add(identifier);
    return identifier;
  }
}

/** A value of custom data. */
export type CustomValue = string | number | boolean | readonly number[];

function customLine([name, value]: readonly [string, CustomValue]): string {
  if (typeof value === 'string') return `string ${name} = ${quoted(value)}`;
  if (typeof value === 'boolean') return `bool ${name} = ${value ? 1 : 0}`;
  if (typeof value === 'number') return `double ${name} = ${value}`;
  return `double[] ${name} = [${value.join(', ')}]`;
}

/** A prim's metadata in its round brackets: the name to show, and what this program alone says of it. */
export function metadata(
  label: string | null,
  custom: Readonly<Record<string, CustomValue>>,
  schemas: readonly string[] = [],
): readonly string[] {
  const entries = Object.entries(custom);
  return [
    ...(schemas.length > 0 ? [`prepend apiSchemas = [${schemas.map(quoted).join(', ')}]`] : []),
    ...(label === null ? [] : [`displayName = ${quoted(label)}`]),
    ...(entries.length > 0
      ? [
          'customData = {',
          '    dictionary standclear = {',
          ...entries.map((e) => `        ${customLine(e)}`),
          '    }',
          '}',
        ]
      : []),
  ];
}

const indented = (lines: readonly string[]): string[] => lines.map((line) => `    ${line}`);

/** A prim: its head, its metadata in round brackets where there is any, and what it holds. */
export function prim(head: string, meta: readonly string[], body: readonly string[]): string[] {
  return [
    ...(meta.length > 0 ? [`def ${head} (`, ...indented(meta), ')'] : [`def ${head}`]),
    '{',
    ...indented(body),
    '}',
  ];
}
