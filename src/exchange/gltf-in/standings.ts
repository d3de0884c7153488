import type { Description, NodeEntry } from './description';
import { ModelFault } from './modelFault';

/** Columns of a 4 × 4 matrix one after another, as glTF has them. */
export type Matrix = readonly number[];
export const IDENTITY: Matrix = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1];

/** `outer` after `inner`. */
export function after(outer: Matrix, inner: Matrix): Matrix {
  const product: number[] = [];
  for (let column = 0; column < 16; column += 4) {
    for (let row = 0; row < 4; row += 1) {
      product.push(
        outer[row] * inner[column] +
          outer[4 + row] * inner[column + 1] +
          outer[8 + row] * inner[column + 2] +
          outer[12 + row] * inner[column + 3],
      );
    }
  }
  return product;
}

/** Moved by `t`, turned by the quaternion [x, y, z, w], scaled by `s`: in that order from outside in. */
export function composed(
  t: readonly number[],
  [x, y, z, w]: readonly number[],
  s: readonly number[],
): Matrix {
  const [xx, yy, zz] = [x * x, y * y, z * z];
  return [
    (1 - 2 * (yy + zz)) * s[0],
    2 * (x * y + z * w) * s[0],
    2 * (x * z - y * w) * s[0],
    0,
    2 * (x * y - z * w) * s[1],
    (1 - 2 * (xx + zz)) * s[1],
    2 * (y * z + x * w) * s[1],
    0,
    2 * (x * z + y * w) * s[2],
    2 * (y * z - x * w) * s[2],
    (1 - 2 * (xx + yy)) * s[2],
    0,
    t[0],
    t[1],
    t[2],
    1,
  ];
}

const ownMatrix = ({ matrix, translation, rotation, scale }: NodeEntry): Matrix =>
  matrix ?? composed(translation, rotation, scale);

/** Says whether a motion mirrors: triangles then turn round and must be turned back. */
export function mirrors(m: Matrix): boolean {
  const determinant =
    m[0] * (m[5] * m[10] - m[6] * m[9]) -
    m[4] * (m[1] * m[10] - m[2] * m[9]) +
    m[8] * (m[1] * m[6] - m[2] * m[5]);
  return determinant < 0;
}

/** Where every node of the scene that is read stands in it; a node that is in no such scene has none. */
export function worldMatrices({ nodes, scenes, scene }: Description): ReadonlyMap<number, Matrix> {
  const children = new Set(nodes.flatMap((node) => node.children));
  const roots =
    scenes.length > 0
      ? scenes[scene ?? 0].nodes
      : nodes.flatMap((_, index) => (children.has(index) ? [] : [index]));
  const world = new Map<number, Matrix>();
  const open = [...new Set(roots)].toReversed().map((index) => ({ index, parent: IDENTITY }));
  for (let next = open.pop(); next; next = open.pop()) {
    const { index, parent } = next;
    if (world.has(index))
      throw new ModelFault(`The description in the file contradicts itself: node ${index} stands twice.`);
    const own = after(parent, ownMatrix(nodes[index]));
    world.set(index, own);
    for (const child of nodes[index].children.toReversed()) open.push({ index: child, parent: own });
  }
  return world;
}
