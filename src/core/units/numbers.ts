/** Keeps a number and its unit on one line. */
export const NBSP = '\u00a0';
/** The minus of print; a hyphen is shorter than a plus and breaks lines. */
const MINUS = '\u2212';

/**
 * A number with a fixed count of decimals, a real minus, and never a minus before a zero.
 * Not a number or infinite is our own mistake and throws.
 */
export function formatNumber(value: number, decimals: number): string {
  return withSign(value, Math.abs(value).toFixed(decimals), false);
}

/** The same with a plus where the printed number is more than zero. */
export function formatSigned(value: number, decimals: number): string {
  return withSign(value, Math.abs(value).toFixed(decimals), true);
}

/** Puts the sign of `value` before its printed size, unless that prints as zero. */
export function withSign(value: number, size: string, plus: boolean): string {
  if (!Number.isFinite(value)) throw new Error(`Printing a number: found ${value}, expected a finite one`);
  if (!/[1-9½¼¾]/.test(size)) return size;
  if (value < 0) return `${MINUS}${size}`;
  return plus ? `+${size}` : size;
}

/** A decimal number without sign or exponent, as a piece of a pattern. */
export const DECIMAL = String.raw`(?:\d+(?:\.\d*)?|\.\d+)`;

/**
 * Brings what people type and what this program prints to one spelling: plain spaces, a hyphen as minus,
 * a point as decimal mark, `'` for feet and `"` for inches, lower case.
 */
export function plainSpelling(text: string): string {
  const plain = text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\u2212\u2013\u2010\u2011]/g, '-')
    .replace(/[\u2032\u2019\u2018\u00b4`]/g, "'")
    .replace(/[\u2033\u201d\u201c]|''/g, '"')
    .toLowerCase();
  return /^[^,.]*\d,\d[^,.]*$/.test(plain) ? plain.replace(',', '.') : plain;
}

/**
 * Reads a signed number followed by one of `units` (or by none) out of any spelling; null if the text is anything else.
 */
export function readNumber(
  text: string,
  units: readonly string[],
): { readonly value: number; readonly unit: string | null } | null {
  const match = new RegExp(`^([-+]?) ?(${DECIMAL}) ?([^\\d\\s].*)?$`).exec(plainSpelling(text));
  if (!match) return null;
  const unit = match[3] ?? null;
  if (unit !== null && !units.includes(unit)) return null;
  const size = Number(match[2]);
  if (!Number.isFinite(size)) return null;
  return { value: match[1] === '-' ? 0 - size : size, unit };
}
