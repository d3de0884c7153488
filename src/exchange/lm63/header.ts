import { type Result, success } from '../../core/units/result';
import { type Lm63Fault, lineFault, plain, quoted } from './fault';
import type { Lines } from './lines';

/** The editions of the standard; the first had no line that names it. */
export type Year = 1986 | 1991 | 1995 | 2002 | 2019;

/** What stands before the numbers. */
export interface Header {
  readonly year: Year;
  /** What the file calls its lamp, in its own words; null where it does not. */
  readonly says: string | null;
  /** What follows `TILT=`. */
  readonly tilt: string;
}

/** More lines of keywords than any file needs. */
const MOST_LINES = 2000;
const LONGEST_NAME = 80;

const YEARS: ReadonlyMap<string, Year> = new Map([
  ['86', 1986],
  ['1986', 1986],
  ['91', 1991],
  ['1991', 1991],
  ['95', 1995],
  ['1995', 1995],
  ['02', 2002],
  ['2002', 2002],
  ['2019', 2019],
]);

const VERSION = /^IES(?:NA)?\s*:?\s*(?:LM-63-)?(\d{2,4})$/i;
const TILT = /^\s*TILT\s*=\s*(.*?)\s*$/i;
const KEYWORD = /^\s*\[(\w+)\]\s*(.*)$/;

/** The year of the edition that a first line names; 1986 where it names none, null where it names no known one. */
function yearOf(first: string): Year | null {
  const line = first.trim();
  if (!/^IES/i.test(line)) return 1986;
  return YEARS.get(VERSION.exec(line)?.[1] ?? '') ?? null;
}

const hasControls = (text: string): boolean => /(?!\t)\p{Cc}|\ufffd/u.test(text);

/**
 * Reads the first line, the keywords or free lines, and the line of the tilt.
 *
 * Source: [lm-63]
 */
export function readHeader(lines: Lines): Result<Header, Lm63Fault> {
  const first = lines.next();
  if (first === null || first.trim() === '')
    return lineFault(1, 'nothing', 'a photometric file, such as one that begins with IESNA:LM-63-2002');
  if (hasControls(first.slice(0, 256)))
    return lineFault(1, 'something that is not text', 'a photometric file as LM-63 has it');
  const year = yearOf(first);
  if (year === null)
    return lineFault(1, quoted(first), 'LM-63 of 1986, 1991, 1995, 2002 or 2019, such as IESNA:LM-63-2002');
  const names = new Map<string, string>();
  let free = year === 1986 ? plain(first) : '';
  for (let line: string | null = first; line !== null && lines.number <= MOST_LINES; line = lines.next()) {
    const tilt = TILT.exec(line.slice(0, 1000))?.[1];
    if (tilt !== undefined) {
      const says = names.get('LUMINAIRE') || names.get('LUMCAT') || free;
      return success({ year, says: says === '' ? null : says, tilt });
    }
    const [, keyword, value] = KEYWORD.exec(line.slice(0, 1000)) ?? [];
    if (keyword && !names.has(keyword.toUpperCase()))
      names.set(keyword.toUpperCase(), plain(value).slice(0, LONGEST_NAME).trim());
    if (year === 1991 && free === '' && !keyword && line !== first) free = plain(line);
    free = free.slice(0, LONGEST_NAME).trim();
  }
  return lineFault(
    lines.number,
    lines.number >= MOST_LINES ? 'no line of the tilt so far' : 'the end of the file',
    'a line TILT=NONE before the numbers',
  );
}
