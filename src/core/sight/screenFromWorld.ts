import type { CameraPose } from '../optics/types';
import type { Grid } from './grid';

/**
 * Rows of the 3 × 4 matrix that takes a world point to [x·depth, y·depth, depth], x and y in pixels of the grid
 * (y down), depth along the axis in metres.
 */
export type ScreenMatrix = Float64Array;

/** Screen from world for a pose on a grid. */
export function screenFromWorld(pose: CameraPose, grid: Grid): ScreenMatrix {
  const { position: p, right, up, forward } = pose;
  const matrix = new Float64Array(12);
  for (let k = 0; k < 3; k += 1) {
    matrix[k] = grid.perTangentX * right[k] + grid.axisX * forward[k];
    matrix[4 + k] = -grid.perTangentY * up[k] + grid.axisY * forward[k];
    matrix[8 + k] = forward[k];
  }
  for (let row = 0; row < 12; row += 4) {
    matrix[row + 3] = -(matrix[row] * p[0] + matrix[row + 1] * p[1] + matrix[row + 2] * p[2]);
  }
  return matrix;
}

/** `outer` after the affine motion `inner` (12 numbers, rows of 3 × 4). */
export function after(outer: ScreenMatrix, inner: readonly number[]): ScreenMatrix {
  const product = new Float64Array(12);
  for (let row = 0; row < 12; row += 4) {
    for (let column = 0; column < 4; column += 1) {
      product[row + column] =
        outer[row] * inner[column] + outer[row + 1] * inner[4 + column] + outer[row + 2] * inner[8 + column];
    }
    product[row + 3] += outer[row + 3];
  }
  return product;
}

/** The reflection in the plane through `point` with unit `normal`, as rows of a 3 × 4 affine matrix. */
export function reflectionIn(normal: readonly number[], point: readonly number[]): number[] {
  const offset = normal[0] * point[0] + normal[1] * point[1] + normal[2] * point[2];
  const rows: number[] = [];
  for (let row = 0; row < 3; row += 1) {
    for (let column = 0; column < 3; column += 1) {
      rows.push((row === column ? 1 : 0) - 2 * normal[row] * normal[column]);
    }
    rows.push(2 * offset * normal[row]);
  }
  return rows;
}
