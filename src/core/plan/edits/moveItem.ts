import type { Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Point, Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { carrierOf, ownAnchor } from './anchorOf';
import { editRecord } from './editRecord';
import { tidyMetres } from './tidy';

type Shift = (spot: Spot) => Spot;

const shiftPoint = (point: Point, shift: Shift): Point => {
  const [x, z] = shift([point[0], point[2]]);
  return [x, point[1], z];
};

function shiftPiece(piece: Piece, shift: Shift): Piece {
  if ('at' in piece) return { ...piece, at: shiftPoint(piece.at, shift) };
  if ('outline' in piece) return { ...piece, outline: piece.outline.map(shift) };
  if ('path' in piece) return { ...piece, path: piece.path.map(shift) };
  return { ...piece, from: shiftPoint(piece.from, shift), to: shiftPoint(piece.to, shift) };
}

function shiftGear(gear: Gear, shift: Shift): Gear {
  if ('at' in gear) return { ...gear, at: shiftPoint(gear.at, shift) };
  if ('path' in gear) return { ...gear, path: gear.path.map(shift) };
  if ('from' in gear) return { ...gear, from: shiftPoint(gear.from, shift), to: shiftPoint(gear.to, shift) };
  if ('at' in gear.place) return { ...gear, place: { at: shiftPoint(gear.place.at, shift) } };
  return gear;
}

function shiftPerformer(performer: Performer, shift: Shift): Performer {
  return { ...performer, marks: performer.marks.map((mark) => ({ ...mark, at: shift(mark.at) })) };
}

/** A record whose anchor moves to `to`, with the rest of it by the same way; heights stay. */
function moved<Entry extends Piece | Gear | Performer>(
  record: Entry,
  to: Spot,
  apply: (record: Entry, shift: Shift) => Entry,
): Entry {
  const from = ownAnchor(record);
  if (!from || (from[0] === to[0] && from[1] === to[1])) return record;
  // The anchor lands on `to` itself: adding the difference would leave the noise of a subtraction in the file.
  const shift: Shift = ([x, z]) => [
    x === from[0] ? to[0] : tidyMetres(x + to[0] - from[0]),
    z === from[1] ? to[1] : tidyMetres(z + to[1] - from[1]),
  ];
  return apply(record, shift);
}

/**
 * Moves an item over the deck so that its anchor (see `anchorOf`) comes to [x, z], metres. Runs, lines and
 * performers move whole; what a stand carries takes the stand along; what a head is aimed at stays.
 */
export function moveItem(plan: Plan, { id, to }: { readonly id: string; readonly to: Spot }): Plan {
  return editRecord(plan, carrierOf(plan, id) ?? id, {
    piece: (piece) => moved(piece, to, shiftPiece),
    cast: (performer) => moved(performer, to, shiftPerformer),
    gear: (gear) => moved(gear, to, shiftGear),
  });
}
