import { formatLength, type LengthSystem } from '../../units/lengths';
import type { TapeDistance, TapedSet } from './tape';

/** One tape in words: `5.66 m from the stair house's south-east corner`. */
export const tapeWords = ({ metres, fromLabel }: TapeDistance, system: LengthSystem): string =>
  `${formatLength(metres, system)} from ${fromLabel}`;

/** Both tapes of a place in one sentence; the side is told where the tapes would also meet at another place on the roof. */
export function tapedSentence({ tapes: [one, other], mirror, side }: TapedSet, system: LengthSystem): string {
  const both = `${tapeWords(one, system)}, ${tapeWords(other, system)}`;
  return `${both}${mirror === 'possible' ? `, ${side.words}` : ''}.`;
}
