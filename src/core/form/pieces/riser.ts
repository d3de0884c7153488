import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** Boards in their frame, and the round tube below them; common practice, no source. */
const BOARDS_METRES = 0.1;
const TUBE_METRES = 0.048;
/** Legs stand this far in from the edge, and at most so far apart; common practice, no source. */
const INSET_METRES = 0.06;
const BAY_METRES = 2;
const MOST_BAYS = 10;
/** Height of the tubes that tie the legs together, and the least height that has room for them. */
const TIE_METRES = 0.18;
const LEAST_TIED_METRES = 0.35;

/** A riser: `boards` to stand on, whose upper side lies at the record's height, on `legs` of tube tied at their feet. */
export function riserParts(riser: PieceOf<'riser'>): readonly PlacedPart[] {
  const [width, height, depth] = riser.size;
  const boards = Math.min(BOARDS_METRES, height * 0.6);
  const placement = standingAt(riser.at, riser.headingDegrees);
  const top = new ShapeBuilder().box([0, height - boards / 2, 0], [width, boards, depth]);
  const legs = new ShapeBuilder();
  const radius = Math.min(TUBE_METRES / 2, width / 8, depth / 8);
  const [xs, zs] = [rowOf(width, radius), rowOf(depth, radius)];
  const under = height - boards;
  for (const x of xs) for (const z of zs) legs.tube([x, 0, z], [x, under, z], radius);
  if (under >= LEAST_TIED_METRES) {
    // Ties along one way lie on those along the other, and end at the axes of the legs.
    const [low, high] = [TIE_METRES, TIE_METRES + 2 * radius];
    for (const x of [xs[0], xs[xs.length - 1]])
      legs.tube([x, low, zs[0]], [x, low, zs[zs.length - 1]], radius);
    for (const z of [zs[0], zs[zs.length - 1]])
      legs.tube([xs[0], high, z], [xs[xs.length - 1], high, z], radius);
  }
  return [
    fixed('boards', top.finish({ substance: 'boards' }, placement)),
    fixed('legs', legs.finish({ substance: 'galvanised', smooth: true }, placement)),
  ];
}

/** Where the legs along one side stand, from its middle: at both ends and evenly between; metres. */
function rowOf(length: number, radius: number): readonly number[] {
  const reach = length / 2 - Math.min(Math.max(INSET_METRES, radius), length / 4);
  const bays = Math.min(Math.max(Math.ceil((2 * reach) / BAY_METRES), 1), MOST_BAYS);
  return Array.from({ length: bays + 1 }, (_, k) => reach * ((2 * k) / bays - 1));
}
