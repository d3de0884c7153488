import type { Matrix4 } from 'three';
import type { PlacedPart } from '../../core/form/types';

/** Sets a matrix to the rows of a 3 × 4 motion, or to none, and returns it. */
export function setToRows(matrix: Matrix4, rows: PlacedPart['worldFromPart']): Matrix4 {
  if (!rows) return matrix.identity();
  const [a, b, c, x, d, e, f, y, g, h, i, z] = rows;
  return matrix.set(a, b, c, x, d, e, f, y, g, h, i, z, 0, 0, 0, 1);
}
