const CLOCK = /^\s*([01]?[0-9]|2[0-3])[:.]([0-5][0-9])\s*$/;

/** A clock time as it is kept, `22:05` of `22.05` or `9:30`; null where none was typed. */
export function readClock(text: string): string | null {
  const [, hours, minutes] = CLOCK.exec(text) ?? [];
  return hours === undefined || minutes === undefined ? null : `${hours.padStart(2, '0')}:${minutes}`;
}

/** Says of a text what would have been a time. */
export const notAClock = (text: string): string =>
  `${JSON.stringify(text.trim())} is not a time: type one such as 22:30.`;
