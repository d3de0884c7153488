import type { HighlightPlace } from '../../../../core/light/aimForHighlight';
import { againstWords } from '../../../../core/report/light/lightWords';
import { formatLength, type LengthSystem } from '../../../../core/units/lengths';

/** A rise of less than this is none, metres. */
const LEVEL_METRES = 0.01;

/** `Move it 1.20 m`, `Raise it 0.40 m and move it 0.10 m`: what brings a highlight to where it is wanted. */
export function placeText({ movedMetres, raise }: HighlightPlace, lengths: LengthSystem): string {
  const { byMetres } = raise;
  const moves = movedMetres >= LEVEL_METRES ? `ove it ${formatLength(movedMetres, lengths)}` : null;
  if (Math.abs(byMetres) < LEVEL_METRES) return moves === null ? 'It lies there now' : `M${moves}`;
  const verb = byMetres > 0 ? 'Raise' : 'Lower';
  const raises = `${verb} it ${formatLength(Math.abs(byMetres), lengths)}`;
  return moves === null ? raises : `${raises} and m${moves}`;
}

/** What would be seen there. */
export const placeSmall = ({ highlight }: HighlightPlace, lengths: LengthSystem): string =>
  highlight
    ? `Then it is ${formatLength(highlight.lengthMetres, lengths)} long, ${againstWords(highlight.stops, 'grey')}.`
    : 'There something would stand before it, or the lamp would not light it.';
