import type { PaletteEntry } from '../../core/kit/palette/entry';
import { crosses } from '../../core/plan/crossings';
import { metresBetween } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';

/** Nearer than this two corners are one, metres. */
export const ONE_CORNER_METRES = 0.001;
/** The longest leg that a plan takes, metres. */
export const LONGEST_LEG_METRES = 500;

/** What a thing of the palette is called in a sentence, with its article. */
export const aThing = ({ word }: Pick<PaletteEntry, 'word'>): string => {
  const small = word.charAt(0).toLowerCase() + word.slice(1);
  return `${/^[aeiou]/.test(small) ? 'an' : 'a'} ${small}`;
};

const theThing = (entry: PaletteEntry): string => aThing(entry).replace(/^an? /, 'the ');
const ofThing = (entry: PaletteEntry): string => {
  const thing = aThing(entry);
  return thing.charAt(0).toUpperCase() + thing.slice(1);
};

/** Why a leg cannot be taken, as a sentence; null where it can. */
export function refusedLeg(from: Spot, to: Spot): string | null {
  const metres = metresBetween(from, to);
  if (metres < ONE_CORNER_METRES)
    return 'This corner is where the last one is. Point elsewhere, or end it with Enter.';
  if (metres > LONGEST_LEG_METRES) return 'A leg is at most 500 m long. Press nearer, or type a length.';
  return null;
}

/** Why what is drawn cannot be ended yet, as a sentence; null where it can. */
export function refusedEnd(entry: PaletteEntry, corners: readonly Spot[], closed: boolean): string | null {
  const least = closed ? 3 : 2;
  if (corners.length < least) {
    const has = corners.length === 0 ? 'none yet' : corners.length === 1 ? 'one' : String(corners.length);
    const needs = closed && entry.how === 'run' ? `To close, ${theThing(entry)}` : ofThing(entry);
    return `${needs} needs ${least === 2 ? 'two corners' : 'three corners'}, and has ${has}.`;
  }
  if (closed && crosses(corners, corners)) {
    return `The outline of ${theThing(entry)} would cross itself. Take the last corner back, or go round another way.`;
  }
  return null;
}
