import { type ClearGround, GROUND_STATES, type GroundState } from '../../../core/clearance/ground/types';
import { groundSentence } from '../../../core/clearance/ground/words';
import { footprintOf } from '../../../core/form/fromAbove/footprint';
import { corners } from '../boxes';
import type { At, Box, Setting } from '../marks';
import { legend, northArrow, scaleBar, scaleWords } from '../roof/furniture';
import { onSheet, type SheetScale } from '../roof/sheetScale';
import type { PackInput } from '../types';
import type { Writer } from '../writer';
import { liesBetter } from './overhead';

const HEADING = 46;
const FOOT = 58;

const FINE: Setting = { size: 7, grey: 0.3 };

/** The worse the darker, as on the other maps of clear ground. */
const GREYS: Readonly<Record<Exclude<GroundState, 'no deck'>, number>> = {
  clear: 0.95,
  close: 0.82,
  covered: 0.66,
  mirrored: 0.45,
  showing: 0.18,
};
const SHOWN = GROUND_STATES.filter((state) => state !== 'no deck');

/** Squares of one state in as few rectangles as go row by row: neighbours in one, and the same stretch in the rows below with it. */
function* rectangles({
  columns,
  rows,
  states,
}: ClearGround): Generator<{ readonly state: number; readonly box: Box }> {
  const done = new Uint8Array(states.length);
  const isOpen = (at: number, state: number): boolean => states[at] === state && done[at] === 0;
  for (let row = 0; row < rows; row += 1) {
    for (let from = 0; from < columns; from += 1) {
      const state = states[row * columns + from];
      if (done[row * columns + from] === 1) continue;
      let until = from + 1;
      while (until < columns && isOpen(row * columns + until, state)) until += 1;
      let below = row + 1;
      const goesOn = (): boolean => {
        for (let at = from; at < until; at += 1) if (!isOpen(below * columns + at, state)) return false;
        return true;
      };
      while (below < rows && goesOn()) below += 1;
      for (let line = row; line < below; line += 1)
        done.fill(1, line * columns + from, line * columns + until);
      yield { state, box: [from, row, until, below] };
    }
  }
}

/** The squares in the grey of their state. */
function drawSquares(writer: Writer, scale: SheetScale, ground: ClearGround): void {
  const { corner, stepMetres } = ground;
  for (const { state, box } of rectangles(ground)) {
    const name = GROUND_STATES[state];
    if (name === 'no deck') continue;
    const points = corners(box).map(([x, y]) =>
      scale.at([corner[0] + x * stepMetres, corner[1] + y * stepMetres]),
    );
    // A hair of the same grey closes the seams that screens show between neighbours.
    writer.shape(points, { fill: GREYS[name], line: GREYS[name], width: 0.15 });
  }
}

/** Where a stand stays clear of all setups over their whole spans, square by square. */
export function groundPart(writer: Writer, { plan, ground: answer }: PackInput, part: string): void {
  if ('why' in answer) {
    writer.newPage(part);
    writer.heading(part);
    writer.text(answer.why);
    return;
  }
  const { ground } = answer;
  const { corner, stepMetres, columns, rows } = ground;
  const extent = [
    corner[0],
    corner[1],
    corner[0] + columns * stepMetres,
    corner[1] + rows * stepMetres,
  ] as const;
  const isLying = liesBetter(writer, extent, HEADING, FOOT);
  writer.newPage(part, isLying);
  const [left, top, right, bottom] = writer.room;
  const drawn: Box = [left, top + HEADING, right, bottom - writer.takenBelow(isLying, FOOT)];
  const scale = onSheet(extent, drawn);
  writer.heading(`${part}, ${scaleWords(scale)}`);
  writer.text(groundSentence(plan, ground));
  drawSquares(writer, scale, ground);
  for (const piece of plan.pieces) {
    if (piece.kind === 'skyline block') continue;
    const { outline, closed } = footprintOf({ section: 'piece', record: piece }, plan);
    writer.within(scale.box, () => writer.shape(outline.map(scale.at), { line: 0, width: 0.5 }, closed));
  }
  const under = writer.boxBelow(FOOT);
  const foot = under[1] + 10;
  scaleBar(writer, scale, [left, foot]);
  northArrow(writer, plan, [under[2] - 20, foot + 20]);
  const below = legend(
    writer,
    [left + 190, foot + 4],
    under[2] - 50,
    SHOWN.map((state) => ({
      word: state,
      draw: ([x, y]: At) =>
        writer.shape(corners([x, y, x + 14, y + 7]), { fill: GREYS[state], line: 0.2, width: 0.4 }),
    })),
  );
  const said =
    'Each square: the worst that any setup makes of the stand, wherever in the square it is, over the whole span.';
  for (const [row, line] of writer.linesOf(said, FINE, under[2] - left - 240).entries())
    writer.line(line, [left + 190, below + row * writer.leading(FINE)], FINE);
}
