import type { PlanFault } from '../../core/plan/faults';
import { formatLength, type LengthSystem } from '../../core/units/lengths';

/** The sentence of the first fault, or null. */
export const firstSentence = (faults: readonly { readonly sentence: string }[]): string | null =>
  faults[0]?.sentence ?? null;

/** What the schema expected, as a short sentence under a field: the field itself says where. */
export const expectedSentence = (faults: readonly PlanFault[]): string | null =>
  faults[0] ? `This takes ${faults[0].expected}.` : null;

const RANGE_OF_METRES = /(-?\d+(?:\.\d+)?) to (-?\d+(?:\.\d+)?) metres/;

/** The same sentence with its metres as the lengths are shown: `1 ft` is asked for where feet are typed. */
export function inLengths(sentence: string, lengths: LengthSystem): string {
  return sentence.replace(RANGE_OF_METRES, (whole, lowest: string, highest: string) => {
    if (lengths === 'm') return whole;
    return `${formatLength(Number(lowest), lengths)} to ${formatLength(Number(highest), lengths)}`;
  });
}
