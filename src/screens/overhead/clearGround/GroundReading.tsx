import { useEffect } from 'react';
import { useStore } from 'zustand';
import { atTexts } from '../../../core/clearance/ground/atWords';
import type { HeightLimits } from '../../../core/clearance/ground/heightLimit';
import { TALLEST_METRES } from '../../../core/clearance/ground/thing';
import type { GroundQuestion, GroundSquares } from '../../../core/clearance/ground/types';
import { usefulWords } from '../../../core/clearance/useful/words';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem, lengthDown } from '../../../core/units/lengths';
import { pointGround, readGround } from '../../../desk/ground/askGround';
import { groundStore } from '../../../desk/ground/groundStore';
import { roofBounds } from '../geometry/roof';
import type { Spot } from '../geometry/spots';
import { ReadingCross, useHovering } from '../levels/ReadingCross';
import type { SheetView } from '../useSheetView';
import { useGroundQuestion } from './useGround';

/** So many setups are said under the pointer. */
const SAID = 2;
/** So much over the limit it is asked who is in the way, metres. */
const OVER_METRES = 0.1;

/** The square around a spot; null beside all. */
function squareAt({ corner, stepMetres, columns, rows }: GroundSquares, [x, z]: Spot): number | null {
  const column = Math.floor((x - corner[0]) / stepMetres);
  const row = Math.floor((z - corner[1]) / stepMetres);
  return column < 0 || row < 0 || column >= columns || row >= rows ? null : row * columns + column;
}

/** How tall a stand may be at a spot, in words; null beside the decks. */
export function limitFigure(limits: HeightLimits, spot: Spot, lengths: LengthSystem): string | null {
  const square = squareAt(limits, spot);
  const metres = square === null ? Number.NaN : limits.limitMetres[square];
  if (Number.isNaN(metres)) return null;
  if (metres === Infinity) return 'any height stays clear';
  if (metres === 0) return 'no stand stays clear';
  // Downwards: what is said has to hold.
  const said = lengthDown(metres, lengths);
  return said === 0
    ? 'no stand stays clear'
    : `up to ${formatLength(said, lengths, { decimals: 1 })} stays clear`;
}

/** What is asked at a spot: of the thing itself, or of a stand that is just too tall there. */
function askedAt(question: GroundQuestion, limits: HeightLimits | null, spot: Spot): GroundQuestion {
  const square = limits && squareAt(limits, spot);
  const metres = limits && square !== null ? limits.limitMetres[square] : Number.NaN;
  if (!Number.isFinite(metres)) return question;
  return { ...question, of: { heightMetres: Math.min(TALLEST_METRES, metres + OVER_METRES) } };
}

/** Who is in the way at a spot of the roof, and when: under the pointer, or where it was left by keys. */
export function GroundReading(props: {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
  readonly board: HTMLElement | null;
}) {
  const { plan, sheet, lengths, board } = props;
  const { place, shows, limits, useful } = useStore(groundStore);
  const question = useGroundQuestion(plan);
  const [left, top, right, bottom] = roofBounds(plan);
  const [x, z]: Spot = place?.at ?? [(left + right) / 2, (top + bottom) / 2];
  const point = (pixels: readonly [number, number]): void => pointGround(sheet.roofAt(pixels));
  useHovering(board, point);
  const shown = shows === 'limits' ? limits : null;
  useEffect(() => {
    if (typeof question !== 'string') readGround(plan, askedAt(question, shown, [x, z]), [x, z]);
  }, [plan, question, shown, x, z]);
  if (typeof question === 'string') return null;
  const { figure, words } = said();
  return (
    <ReadingCross
      name="Who sees it on the roof"
      at={sheet.at([x, z])}
      room={[sheet.pane.width, sheet.pane.height]}
      figure={figure}
      words={words}
      onMove={point}
    />
  );

  function said(): { readonly figure: string; readonly words: string } {
    const reading = place?.reading;
    if (reading === undefined) return { figure: 'reading', words: 'the ground there' };
    if (reading === null) return { figure: 'no deck', words: 'nothing stands beside the roof' };
    const texts = atTexts(plan, reading);
    const more = texts.length > SAID ? `, and ${texts.length - SAID} more` : '';
    const who = `${texts.slice(0, SAID).join('; ')}${more}`;
    const limit = shown && limitFigure(shown, [x, z], lengths);
    if (limit) return { figure: limit, words: who === '' ? 'nobody sees it' : `taller, ${who}` };
    const square = useful && squareAt(useful, [x, z]);
    const lamp = useful && square !== null ? usefulWords(plan, useful, square) : null;
    const words = [lamp, who === '' ? null : who].filter((each) => each !== null).join('; ');
    return { figure: reading.state, words: words === '' ? 'nobody sees it here' : words };
  }
}
