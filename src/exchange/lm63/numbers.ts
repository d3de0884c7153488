import { TABLE_LIMITS } from '../../core/plan/schema/distribution';
import { formatNumber } from '../../core/units/numbers';
import { type Result, success } from '../../core/units/result';
import { type Lm63Fault, lineFault, quoted } from './fault';
import type { Words } from './lines';

const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d{1,3})?$/;
const LONGEST_NUMBER = 40;

/** What a number may be: its name for the sentence, and its ends. */
export interface Wanted {
  readonly name: string;
  readonly lowest: number;
  readonly highest: number;
  readonly whole?: true;
}

const ends = ({ lowest, highest, whole }: Wanted): string =>
  `${whole ? 'a whole number of ' : ''}${formatNumber(lowest, 0)} to ${highest.toLocaleString('en-GB')}`;

/** The next number of the file, or a fault that names its line. */
export function readOne(words: Words, wanted: Wanted): Result<number, Lm63Fault> {
  const word = words.next();
  const expected = `${wanted.name}, ${ends(wanted)}`;
  if (word === null) return lineFault(words.line, 'the end of the file', expected);
  const value = word.length <= LONGEST_NUMBER && NUMBER.test(word) ? Number(word) : Number.NaN;
  if (!(value >= wanted.lowest && value <= wanted.highest) || (wanted.whole && !Number.isInteger(value)))
    return lineFault(words.line, quoted(word), expected);
  return success(value + 0);
}

/** Numbers one after another. */
export function readMany(words: Words, count: number, wanted: Wanted): Result<number[], Lm63Fault> {
  const values: number[] = [];
  while (values.length < count) {
    const read = readOne(words, wanted);
    if (!read.ok) return read;
    values.push(read.value);
  }
  return success(values);
}

/** Angles that go up. */
export function readAngles(words: Words, count: number, wanted: Wanted): Result<number[], Lm63Fault> {
  const values: number[] = [];
  while (values.length < count) {
    const read = readOne(words, wanted);
    if (!read.ok) return read;
    const before = values.at(-1);
    if (before !== undefined && read.value <= before)
      return lineFault(
        words.line,
        `${wanted.name} ${read.value}`,
        `more than ${before}, the one before: angles go up`,
      );
    values.push(read.value);
  }
  return success(values);
}

/** Counts, codes and factors of the two lines before the angles. Source: [lm-63] */
export const WANTED = {
  lamps: { name: 'the number of lamps', lowest: 1, highest: 10000, whole: true },
  lumens: {
    name: 'lumens of each lamp, −1 for measured as a whole',
    lowest: -1,
    highest: TABLE_LIMITS.lumens,
  },
  multiplier: { name: 'the candela multiplier', lowest: 0, highest: 1e6 },
  verticals: { name: 'the number of vertical angles', lowest: 2, highest: TABLE_LIMITS.angles, whole: true },
  horizontals: {
    name: 'the number of horizontal angles',
    lowest: 1,
    highest: TABLE_LIMITS.angles,
    whole: true,
  },
  type: { name: 'the type, 1 for C, 2 for B, 3 for A', lowest: 1, highest: 3, whole: true },
  units: { name: 'the unit, 1 for feet, 2 for metres', lowest: 1, highest: 2, whole: true },
  size: { name: 'a size of what glows', lowest: -1000, highest: 1000 },
  ballast: { name: 'the ballast factor', lowest: 0, highest: 100 },
  second: { name: 'the factor after the ballast factor', lowest: 0, highest: 100 },
  watts: { name: 'watts', lowest: 0, highest: 1e6 },
  candela: { name: 'candela', lowest: 0, highest: TABLE_LIMITS.candela },
  tiltLamp: { name: 'how the lamp sits, 1 to 3', lowest: 1, highest: 3, whole: true },
  tilts: { name: 'the number of tilts', lowest: 1, highest: TABLE_LIMITS.angles, whole: true },
  tilt: { name: 'the tilt', lowest: -180, highest: 180 },
  tiltFactor: { name: 'the factor of the tilt', lowest: 0, highest: 100 },
} as const satisfies Record<string, Wanted>;
