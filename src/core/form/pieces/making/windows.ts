import { shareOf } from '../../build/seededHash';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';

/** Height of a floor and pitch of the windows along a front; common practice, no source. */
const FLOOR_METRES = 3.1;
const PITCH_METRES = 2.4;
const WINDOW_METRES = [1.1, 1.45] as const;
/** Clear of the front, so that window and wall never fight for a pixel. */
const PROUD_METRES = 0.02;
/** Lit windows that a block may be expected to have; a bigger one gets them further apart. */
const MOST_LIT = 140;

/** The three lights behind windows. */
export type WindowTone = 'warm' | 'cool' | 'dim';

/** Lamplight, tubes and screens, and a lamp two rooms away. */
export const WINDOW_COLOURS: Readonly<Record<WindowTone, string>> = {
  warm: '#ffc27a',
  cool: '#cfe3ff',
  dim: '#8a6a45',
};

interface Grid {
  readonly columns: number;
  readonly floors: number;
}

/** The lit windows of a block that stands at the origin, by tone: each a flat quad that faces outwards. */
export function litWindows(
  [width, height, depth]: readonly [number, number, number],
  { litShare, seed }: { readonly litShare: number; readonly seed: number },
): Readonly<Record<WindowTone, ShapeBuilder>> {
  const sheets = { warm: new ShapeBuilder(), cool: new ShapeBuilder(), dim: new ShapeBuilder() };
  // Front, right, back and left, as the way along and the way out of each.
  const fronts: readonly {
    readonly length: number;
    readonly out: Vec3;
    readonly along: Vec3;
    readonly far: number;
  }[] = [
    { length: width, out: [0, 0, -1], along: [-1, 0, 0], far: depth / 2 },
    { length: depth, out: [1, 0, 0], along: [0, 0, -1], far: width / 2 },
    { length: width, out: [0, 0, 1], along: [1, 0, 0], far: depth / 2 },
    { length: depth, out: [-1, 0, 0], along: [0, 0, 1], far: width / 2 },
  ];
  const all = fronts.reduce((sum, { length }) => sum + cells(gridOf(length, height, 1)), 0);
  const coarse = Math.max(1, Math.sqrt((all * litShare) / MOST_LIT));
  fronts.forEach(({ length, out, along, far }, side) => {
    const grid = gridOf(length, height, coarse);
    for (let floor = 0; floor < grid.floors; floor += 1) {
      for (let column = 0; column < grid.columns; column += 1) {
        if (shareOf(seed, side, floor, column, 1) >= litShare) continue;
        const u = length * ((column + 0.5) / grid.columns - 0.5);
        const v = height * ((floor + 0.5) / grid.floors);
        const at = (du: number, dv: number): Vec3 => [
          along[0] * (u + du) + out[0] * (far + PROUD_METRES),
          v + dv,
          along[2] * (u + du) + out[2] * (far + PROUD_METRES),
        ];
        const halfWidth = Math.min(WINDOW_METRES[0], length / 2) / 2;
        const halfHeight = Math.min(WINDOW_METRES[1], height / 2) / 2;
        sheets[toneOf(shareOf(seed, side, floor, column, 2))].quad(
          at(-halfWidth, -halfHeight),
          at(halfWidth, -halfHeight),
          at(halfWidth, halfHeight),
          at(-halfWidth, halfHeight),
        );
      }
    }
  });
  return sheets;
}

const cells = ({ columns, floors }: Grid): number => columns * floors;

function gridOf(length: number, height: number, coarse: number): Grid {
  return {
    columns: Math.max(1, Math.floor(length / (PITCH_METRES * coarse))),
    floors: Math.max(1, Math.floor(height / (FLOOR_METRES * coarse))),
  };
}

const toneOf = (share: number): WindowTone => (share < 0.55 ? 'warm' : share < 0.75 ? 'cool' : 'dim');
