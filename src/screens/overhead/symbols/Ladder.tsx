import { hullOf } from '../../../core/form/fromAbove/hull';
import { gearParts } from '../../../core/form/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { polygon, polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import type { GearOf } from './kinds';

/** A step ladder: its four stiles to their feet, and its treads. */
export function Ladder({ gear, plan }: { readonly gear: GearOf<'ladder'>; readonly plan: Plan }) {
  const parts = gearParts(gear, plan);
  const stiles = parts
    .filter(({ name }) => name === 'stiles')
    .flatMap(({ shape }) =>
      shape.tubes.map(({ from, to }) =>
        polyline([
          [from[0], from[2]],
          [to[0], to[2]],
        ]),
      ),
    );
  const treads = parts
    .filter(({ name }) => name === 'treads')
    .flatMap(({ shape }) => boxesOf(shape.positions));
  return (
    <>
      <path className="thin" d={stiles.join('')} />
      <path className="tread" d={treads.map((tread) => polygon(tread)).join('')} />
    </>
  );
}

/** Vertices of a box as the builder makes them, six faces of four corners. */
const CORNERS = 24;

function boxesOf(positions: Float32Array): Spot[][] {
  const boxes: Spot[][] = [];
  for (let start = 0; start + CORNERS * 3 <= positions.length; start += CORNERS * 3) {
    const corners = Array.from(
      { length: CORNERS },
      (_, k): Spot => [positions[start + k * 3], positions[start + k * 3 + 2]],
    );
    boxes.push(hullOf(corners));
  }
  return boxes;
}
