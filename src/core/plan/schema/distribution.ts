import * as v from 'valibot';
import { within } from './numbers';
import { label } from './texts';

/** How large a candela table may be, and what may stand in it. */
export const TABLE_LIMITS = { angles: 361, candela: 1e8, lumens: 1e7 } as const;
/** What a meter may have read, and how far from the lamp. */
export const READING_LIMITS = { lux: [0.01, 1e6], metres: [0.1, 200] } as const;

const isCandela = (value: unknown): boolean =>
  typeof value === 'number' && value >= 0 && value <= TABLE_LIMITS.candela;

const isRow = (value: unknown): boolean =>
  Array.isArray(value) && value.length <= TABLE_LIMITS.angles && value.every(isCandela);

/** A table may hold a hundred thousand numbers and is checked at every edit: a row at once, not number by number. */
const row = v.pipe(
  v.custom<number[]>(isRow, `at most ${TABLE_LIMITS.angles} candela, each 0 to ${TABLE_LIMITS.candela}`),
  v.transform((candela) =>
    candela.some((value) => Object.is(value, -0)) ? candela.map((value) => value + 0) : candela,
  ),
);

const angles = (lowest: number, highest: number) =>
  v.pipe(
    v.array(within(lowest, highest, 'degrees')),
    v.maxLength(TABLE_LIMITS.angles, `at most ${TABLE_LIMITS.angles} angles`),
  );

/**
 * How a lamp sends its light, measured: candela by the angle off its axis (vertical, 0 along it) and round it
 * (horizontal). Horizontal 0 is the lamp's own right as seen from behind it, 90 its top; what is left out follows from
 * symmetry, as LM-63 has it: one horizontal angle is the same all round, 0 to 90 and 0 to 180 are mirrored, 90 to 270
 * too. Angles go up; that the rows fit them is checked with the references.
 */
export const distribution = v.strictObject({
  verticalDegrees: angles(0, 180),
  horizontalDegrees: angles(0, 360),
  /** A row for each horizontal angle, with a value for each vertical one. */
  candela: v.pipe(
    v.array(row),
    v.maxLength(TABLE_LIMITS.angles, `at most ${TABLE_LIMITS.angles} rows of candela`),
  ),
  /** Of the bare lamps, where the file states them. */
  lumens: v.optional(within(0, TABLE_LIMITS.lumens, 'lumens')),
  /** What the file calls the lamp, in its own words. */
  says: v.optional(label),
  /** Name of the file that it was read from. */
  source: label,
});

/** What a meter read square to the lamp's axis, so far from its face: it says how strong the lamp is there. */
export const reading = v.strictObject({
  lux: within(...READING_LIMITS.lux, 'lux'),
  metres: within(...READING_LIMITS.metres, 'metres'),
});

export type Distribution = v.InferOutput<typeof distribution>;
export type Reading = v.InferOutput<typeof reading>;
