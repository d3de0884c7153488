const LONGEST_COUNTED = 60;
const COUNTED = /^(.*?)([1-9][0-9]{0,8})([^0-9]*)$/s;

/** The name after a numbered one: `sky-2` after `sky-1`; any other string itself. */
export function nextName(text: string): string {
  if (text.length > LONGEST_COUNTED) return text;
  const parts = COUNTED.exec(text);
  return parts ? `${parts[1]}${Number(parts[2]) + 1}${parts[3]}` : text;
}

const DECIMAL = /^(-?)([0-9]{1,8})(?:\.([0-9]{1,6}))?$/;

/** A short decimal as a whole number of its last places; null for any other text. */
function wholeOf(text: string, places: number): number | null {
  const parts = DECIMAL.exec(text);
  if (!parts) return null;
  const whole = Number(`${parts[2]}${(parts[3] ?? '').padEnd(places, '0')}`);
  return parts[1] ? -whole : whole;
}

const placesOf = (text: string): number => {
  const point = text.indexOf('.');
  return point < 0 ? 0 : text.length - point - 1;
};

/** The number that goes on in even steps from two others, as JSON writes it; '' where there is none. In whole numbers. */
export function nextNumber(last: string, before: string): string {
  const places = Math.max(placesOf(last), placesOf(before));
  const a = wholeOf(last, places);
  const b = wholeOf(before, places);
  if (a === null || b === null) return '';
  const next = 2 * a - b;
  const digits = String(Math.abs(next)).padStart(places + 1, '0');
  const front = digits.slice(0, digits.length - places);
  const back = digits.slice(digits.length - places).replace(/0+$/, '');
  return `${next < 0 ? '-' : ''}${front}${back ? `.${back}` : ''}`;
}
