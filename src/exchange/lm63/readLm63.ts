import { candelaTable } from '../../core/form/photometry/candelaTable';
import { isWholeTurn } from '../../core/plan/lightChecks';
import { type Distribution, TABLE_LIMITS } from '../../core/plan/schema/distribution';
import { formatNumber, NBSP } from '../../core/units/numbers';
import { type Result, success } from '../../core/units/result';
import { type Lm63Fault, lineFault, plain, quoted } from './fault';
import { readHeader, type Year } from './header';
import { Lines, Words } from './lines';
import { readAngles, readMany, readOne, WANTED } from './numbers';
import { asTypeC, type OtherTable } from './turned';

/** What a photometric file holds. */
export interface Lm63File {
  readonly year: Year;
  readonly distribution: Distribution;
  /** What the lamp draws, as the file has it; null where it says 0. */
  readonly watts: number | null;
  /** [width, length, height] of what glows; negative for round, as the standard has it; metres. */
  readonly openingMetres: readonly [number, number, number];
  /** What was done with the file that its reader should know, a sentence each. */
  readonly remarks: readonly string[];
}

/** More text than a table of the allowed size needs, in characters and in the bytes of a file. */
export const LONGEST_LM63 = 2_000_000;

/** The mark that old systems end a text with. */
const END_OF_TEXT = '\u001a';

/** How long a text is without the marks at its end. */
function lengthOf(text: string): number {
  let length = text.length;
  while (text[length - 1] === END_OF_TEXT) length -= 1;
  return length;
}

const METRES_PER_FOOT = 0.3048;
/** A lamp that shines this much more than its bare lamps give is a mistake somewhere. */
const MOST_EFFICIENT = 1.02;

interface Numbers {
  readonly lamps: number;
  readonly lumens: number;
  readonly factor: number;
  readonly type: number;
  readonly counts: readonly [verticals: number, horizontals: number];
  readonly openingMetres: readonly [number, number, number];
  readonly watts: number;
  readonly remarks: readonly string[];
}

/**
 * The ten numbers and the three. The second of the three was a factor until 1995, is 1 in 2002, and says how the file
 * came about in 2019: only where it is a factor are candela multiplied by it.
 */
function readNumbers(words: Words, year: Year): Result<Numbers, Lm63Fault> {
  const order = [
    WANTED.lamps,
    WANTED.lumens,
    WANTED.multiplier,
    WANTED.verticals,
    WANTED.horizontals,
    WANTED.type,
    WANTED.units,
    WANTED.size,
    WANTED.size,
    WANTED.size,
    WANTED.ballast,
    WANTED.second,
    WANTED.watts,
  ];
  const values: number[] = [];
  for (const wanted of order) {
    const read = readOne(words, wanted);
    if (!read.ok) return read;
    values.push(read.value);
  }
  const [lamps, lumens, multiplier, verticals, horizontals, type, units, width, length, height] = values;
  const [ballast, second, watts] = values.slice(10);
  const metres = units === 1 ? METRES_PER_FOOT : 1;
  const isFactor = year <= 1995;
  return success({
    lamps,
    lumens,
    factor: multiplier * ballast * (isFactor ? second : 1),
    type,
    counts: [verticals, horizontals],
    openingMetres: [width * metres, length * metres, height * metres],
    watts,
    remarks:
      year === 2002 && second !== 1
        ? [`The number after the ballast factor, ${second}, is none of the factors of 2002 and was left out.`]
        : [],
  });
}

/** Passes the line of the tilt and what it brings: a lamp whose light depends on its tilt is not read. */
function passTilt(words: Words, tilt: string): Result<null, Lm63Fault> {
  const found = plain(tilt).toUpperCase();
  if (found === 'NONE') return success(null);
  const at = words.line;
  if (found !== 'INCLUDE') return lineFault(at, quoted(`TILT=${tilt}`), 'TILT=NONE or TILT=INCLUDE');
  const lamp = readOne(words, WANTED.tiltLamp);
  if (!lamp.ok) return lamp;
  const count = readOne(words, WANTED.tilts);
  if (!count.ok) return count;
  const angles = readAngles(words, count.value, WANTED.tilt);
  if (!angles.ok) return angles;
  const factors = readMany(words, count.value, WANTED.tiltFactor);
  if (!factors.ok) return factors;
  if (factors.value.every((factor) => Math.abs(factor - 1) < 1e-6)) return success(null);
  return lineFault(
    at,
    `a lamp that gives ${Math.min(...factors.value)} to ${Math.max(...factors.value)} of its light as it is tilted`,
    'one whose light does not depend on its tilt',
  );
}

function readTable(words: Words, { counts, type, factor }: Numbers): Result<OtherTable, Lm63Fault> {
  const isC = type === 1;
  const vertical = { name: 'a vertical angle', lowest: isC ? 0 : -90, highest: isC ? 180 : 90 };
  const horizontal = { name: 'a horizontal angle', lowest: isC ? 0 : -90, highest: isC ? 360 : 90 };
  const verticals = readAngles(words, counts[0], vertical);
  if (!verticals.ok) return verticals;
  const horizontals = readAngles(words, counts[1], horizontal);
  if (!horizontals.ok) return horizontals;
  if (isC && !isWholeTurn(horizontals.value) && !stopsShort(horizontals.value))
    return lineFault(
      words.line,
      `horizontal angles from ${horizontals.value[0]} to ${horizontals.value.at(-1)}`,
      '0 alone, 0 to 90, 0 to 180, 90 to 270 or 0 to 360',
    );
  const line = words.line;
  const candela: number[][] = [];
  let hasLight = false;
  for (let row = 0; row < counts[1]; row += 1) {
    const read = readMany(words, counts[0], WANTED.candela);
    if (!read.ok) return read;
    const values = read.value.map((value) => Number((value * factor).toPrecision(7)));
    const most = Math.max(...values);
    hasLight ||= most > 0;
    if (most > TABLE_LIMITS.candela)
      return lineFault(words.line, `${most} candela with its factors`, `at most ${TABLE_LIMITS.candela}`);
    candela.push(values);
  }
  if (!hasLight) return lineFault(line, 'candela that come to 0 with their factors', 'some light');
  const more = words.next();
  if (more !== null) return lineFault(words.line, quoted(more), 'the end of the file after the last candela');
  return success({ verticalDegrees: verticals.value, horizontalDegrees: horizontals.value, candela });
}

/** Whether a table of type C stops short of the whole turn that it begins, without the row at 360. */
const stopsShort = (angles: readonly number[]): boolean => {
  const last = angles.at(-1) ?? 0;
  return angles[0] === 0 && last > 180 && last < 360;
};

/** A table with its first row again at 360. */
const closed = ({ verticalDegrees, horizontalDegrees, candela }: OtherTable): OtherTable => ({
  verticalDegrees,
  horizontalDegrees: [...horizontalDegrees, 360],
  candela: [...candela, [...candela[0]]],
});

const lumenWords = (lumens: number): string => `${formatNumber(lumens, 0)}${NBSP}lm`;

function remarksOf(numbers: Numbers, table: OtherTable, stated: number | null, lumens: number): string[] {
  const remarks: string[] = [...numbers.remarks];
  const last = table.verticalDegrees.at(-1) ?? 0;
  if (numbers.type !== 1)
    remarks.push(
      `The table is of type ${numbers.type === 2 ? 'B' : 'A'} and was read again by angles off and round the axis.`,
    );
  else if (last < 90) remarks.push(`The table ends at ${last}°: nothing is taken to shine beyond it.`);
  if (stated !== null && lumens > stated * MOST_EFFICIENT)
    remarks.push(
      `The table comes to ${lumenWords(lumens)}, more than the ${lumenWords(stated)} of its bare lamps.`,
    );
  return remarks;
}

/**
 * Reads a photometric file of any edition of LM-63 from its text: type C as it is, types A and B read again by type
 * C's angles, lumens of the lamps where they are stated. Candela come with the multiplier and the factors in them.
 * What cannot be read is one fault that names the line; time and memory are bounded whatever the text is.
 *
 * Source: [lm-63]
 *
 * @param name the file's name, which the plan keeps as its source
 */
export function readLm63(text: string, name: string): Result<Lm63File, Lm63Fault> {
  if (text.length > LONGEST_LM63)
    return lineFault(null, `${text.length} characters`, `at most ${LONGEST_LM63}`);
  const lines = new Lines(text.slice(text.charCodeAt(0) === 0xfeff ? 1 : 0, lengthOf(text)));
  const header = readHeader(lines);
  if (!header.ok) return header;
  const words = new Words(lines);
  const tilt = passTilt(words, header.value.tilt);
  if (!tilt.ok) return tilt;
  const numbers = readNumbers(words, header.value.year);
  if (!numbers.ok) return numbers;
  const { type, lamps, lumens, watts, openingMetres } = numbers.value;
  const line = words.line;
  const read = readTable(words, numbers.value);
  if (!read.ok) return read;
  const isShort = type === 1 && stopsShort(read.value.horizontalDegrees);
  const { verticalDegrees, horizontalDegrees, candela } =
    type === 1 ? (isShort ? closed(read.value) : read.value) : asTypeC(type === 2 ? 'B' : 'A', read.value);
  const stated = lumens < 0 ? null : lamps * lumens;
  const distribution: Distribution = {
    verticalDegrees,
    horizontalDegrees,
    candela,
    ...(stated !== null && stated > 0 && stated <= TABLE_LIMITS.lumens && { lumens: stated }),
    ...(header.value.says !== null && { says: header.value.says }),
    source: plain(name).slice(0, 80).trim() || 'photometric file',
  };
  const total = candelaTable(distribution).lumens;
  if (total === 0) return lineFault(line, 'light that lies between all angles off the axis', 'some light');
  const remarks = remarksOf(numbers.value, read.value, distribution.lumens ?? null, total);
  return success({
    year: header.value.year,
    distribution,
    watts: watts > 0 ? watts : null,
    openingMetres,
    remarks: isShort ? [...remarks, 'The row at 360° was missing and is taken to be that at 0°.'] : remarks,
  });
}
