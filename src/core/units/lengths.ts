import { notA, type UnitFault } from './faults';
import { DECIMAL, formatNumber, NBSP, plainSpelling, readNumber, withSign } from './numbers';
import { type Result, success } from './result';

/** How lengths are shown and what a bare number means. */
export type LengthSystem = 'm' | 'ft-in';

/** Exact by definition of the international inch. Source: common practice, no source. */
export const METRES_PER_INCH = 0.0254;
export const METRES_PER_FOOT = 12 * METRES_PER_INCH;
const SQUARE_METRES_PER_SQUARE_FOOT = METRES_PER_FOOT * METRES_PER_FOOT;
const METRES_PER_QUARTER_INCH = METRES_PER_INCH / 4;
const QUARTERS = ['', '¼', '½', '¾'] as const;

/**
 * A length to read: `3.20 m`, or feet and inches to the nearest quarter inch, `14′ 1¼″`, below a foot `6½″`.
 * @param metres any finite length; a negative one gets a real minus
 * @param options `decimals` of metres, 2 unless said
 */
export function formatLength(
  metres: number,
  system: LengthSystem,
  options: { readonly decimals?: number } = {},
): string {
  if (system === 'm') return `${formatNumber(metres, options.decimals ?? 2)}${NBSP}m`;
  const quarterInches = Math.round(Math.abs(metres) / METRES_PER_QUARTER_INCH);
  const feet = Math.floor(quarterInches / 48);
  const inches = Math.floor((quarterInches % 48) / 4);
  const quarter = QUARTERS[quarterInches % 4];
  const inchText = `${inches === 0 && quarter !== '' ? '' : inches}${quarter}″`;
  return withSign(metres, feet > 0 ? `${feet}′${NBSP}${inchText}` : inchText, false);
}

/** The longest length that is no longer than this and can be read: a whole decimetre, or a whole quarter inch. */
export function lengthDown(metres: number, system: LengthSystem): number {
  const step = system === 'm' ? 0.1 : METRES_PER_QUARTER_INCH;
  return Math.floor(metres / step + 1e-9) * step;
}

const METRIC: Readonly<Record<string, number>> = {
  m: 1,
  metre: 1,
  metres: 1,
  meter: 1,
  meters: 1,
  cm: 0.01,
  mm: 0.001,
  km: 1000,
};

const FRACTIONS: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅓': '1/3',
  '⅔': '2/3',
};

const FRACTION = String.raw`\d+ ?/ ?\d+`;
const AMOUNT = `${DECIMAL} ${FRACTION}|${FRACTION}|${DECIMAL}`;
const FEET = new RegExp(
  `^(-|\\+)? ?(?:(${AMOUNT}) ?(?:ft|feet|foot|') ?-? ?)?(?:(${AMOUNT}) ?(in|inch|inches|")?)?$`,
);

const EXPECTED = 'metres, such as 3.2 m or 320 cm, or feet and inches, such as 10′ 6½″';

/**
 * Reads a length that a person typed: `3.2`, `3,2`, `3.2 m`, `320 cm`, `10'6"`, `10′ 6½″`, `126 in`, `10 ft 6 1/2 in`.
 * @param system what a bare number is in: metres, or feet
 * @returns metres, or a fault that says what would be understood
 */
export function parseLength(text: string, system: LengthSystem = 'm'): Result<number, UnitFault> {
  const metric = readNumber(text, Object.keys(METRIC));
  if (metric) {
    const perUnit = metric.unit === null ? (system === 'm' ? 1 : METRES_PER_FOOT) : METRIC[metric.unit];
    return finite(metric.value * perUnit, text);
  }
  const spelled = plainSpelling(text).replace(
    /(\d?) ?([¼½¾⅛⅜⅝⅞⅓⅔])/g,
    (_, digit: string, sign: string) => `${digit === '' ? '' : `${digit} `}${FRACTIONS[sign]}`,
  );
  const match = FEET.exec(spelled);
  if (!match) return notA('length', text, EXPECTED);
  const [, sign, feet, inches, inchUnit] = match;
  // Inches may go without their unit only behind feet: `10'6`.
  if (feet === undefined && inchUnit === undefined) return notA('length', text, EXPECTED);
  const metres = amount(feet) * METRES_PER_FOOT + amount(inches) * METRES_PER_INCH;
  return finite(sign === '-' ? 0 - metres : metres, text);
}

/** `6`, `1/2` or `6 1/2` as a number; nothing counts as 0. */
function amount(text: string | undefined): number {
  if (text === undefined) return 0;
  const fraction = /(\d+) ?\/ ?(\d+)$/.exec(text);
  if (!fraction) return Number(text);
  const whole = text.slice(0, fraction.index).trim();
  return (whole === '' ? 0 : Number(whole)) + Number(fraction[1]) / Number(fraction[2]);
}

function finite(metres: number, text: string): Result<number, UnitFault> {
  return Number.isFinite(metres) ? success(metres) : notA('length', text, EXPECTED);
}

/** An area to read: `24.0 m²`, or whole square feet. */
export const formatArea = (squareMetres: number, system: LengthSystem): string =>
  system === 'm'
    ? `${formatNumber(squareMetres, 1)}${NBSP}m²`
    : `${formatNumber(squareMetres / SQUARE_METRES_PER_SQUARE_FOOT, 0)}${NBSP}ft²`;
