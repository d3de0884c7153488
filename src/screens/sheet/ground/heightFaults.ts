import { TALLEST_METRES } from '../../../core/clearance/ground/thing';
import type { Range } from '../../../core/clearance/useful/roles';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';

const tooTall = (metres: number, lengths: LengthSystem): string | null =>
  metres > TALLEST_METRES
    ? `Found ${formatLength(metres, lengths)}, expected at most ${formatLength(TALLEST_METRES, lengths)}.`
    : null;

/** What is wrong with the height of a stand, metres; null for nothing. */
export const heightFault = (metres: number, lengths: LengthSystem): string | null =>
  metres <= 0
    ? `Found ${formatLength(metres, lengths)}, expected more than ${formatLength(0, lengths)}.`
    : tooTall(metres, lengths);

/** What is wrong with the height from which something hangs, where it ends at another; metres; null for nothing. */
export function lowFault(metres: number, highMetres: number, lengths: LengthSystem): string | null {
  const found = `Found ${formatLength(metres, lengths)}, expected`;
  if (metres < 0) return `${found} ${formatLength(0, lengths)} or more.`;
  return metres >= highMetres
    ? `${found} less than ${formatLength(highMetres, lengths)}, where it ends.`
    : null;
}

/** What is wrong with the height up to which something hangs, where it begins at another; metres; null for nothing. */
export const highFault = (metres: number, lowMetres: number, lengths: LengthSystem): string | null =>
  metres <= lowMetres
    ? `Found ${formatLength(metres, lengths)}, expected more than ${formatLength(lowMetres, lengths)}, where it begins.`
    : tooTall(metres, lengths);

/** What is wrong with a range that somebody typed an end of; `printed` writes its numbers; null for nothing. */
export function rangeFault(
  [from, to]: Range,
  [least, most]: Range,
  printed: (value: number) => string,
): string | null {
  const outside = [from, to].find((end) => end < least || end > most);
  if (outside !== undefined)
    return `Found ${printed(outside)}, expected ${printed(least)} to ${printed(most)}.`;
  return from > to ? `Found ${printed(from)} to ${printed(to)}, expected the lower end first.` : null;
}
