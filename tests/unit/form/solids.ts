import type { PartShape, PlacedPart } from '../../../src/core/form/types';

/** Names of the parts that are sheets: open, and counted from both sides. */
export const SHEETS = /^(top|mesh|cloths|sheet|white|black|windows .+)$/;

/**
 * Edges, after welding corners closer than 0.01 mm, that are not walked once each way. Two solids of a part that
 * happen to share an edge walk it twice each way, which is as closed.
 */
export function openEdges({ positions, indices }: PartShape): readonly string[] {
  const keys: string[] = [];
  for (let k = 0; k < positions.length; k += 3) {
    keys.push([0, 1, 2].map((axis) => Math.round(positions[k + axis] * 1e5) + 0).join(' '));
  }
  const uses = new Map<string, { there: number; back: number }>();
  for (let k = 0; k < indices.length; k += 3) {
    for (let corner = 0; corner < 3; corner += 1) {
      const a = keys[indices[k + corner]];
      const b = keys[indices[k + ((corner + 1) % 3)]];
      // The pole of a ball is an edge without length.
      if (a === b) continue;
      const edge = a < b ? `${a} to ${b}` : `${b} to ${a}`;
      const use = uses.get(edge) ?? { there: 0, back: 0 };
      uses.set(edge, use);
      if (a < b) use.there += 1;
      else use.back += 1;
    }
  }
  return [...uses]
    .filter(([, { there, back }]) => there !== back)
    .map(([edge, { there, back }]) => `${edge}: ${there} there, ${back} back`);
}

/** Volume by the divergence theorem, cubic metres: negative where triangles face inwards. */
export function signedVolume({ positions, indices }: PartShape): number {
  const at = (k: number) => [positions[3 * k], positions[3 * k + 1], positions[3 * k + 2]] as const;
  // Measured from one of its own corners, so that a far part loses no digits.
  const [ox, oy, oz] = at(0);
  let volume = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => {
      const [x, y, z] = at(indices[k + corner]);
      return [x - ox, y - oy, z - oz];
    });
    volume +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return volume / 6;
}

/** Area of the triangles that face up, seen from above, square metres. */
export function areaFromAbove({ positions, indices }: PartShape): number {
  let twice = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => 3 * indices[k + corner]);
    const [ux, uz] = [positions[b] - positions[a], positions[b + 2] - positions[a + 2]];
    const [vx, vz] = [positions[c] - positions[a], positions[c + 2] - positions[a + 2]];
    twice += Math.max(0, uz * vx - ux * vz);
  }
  return twice / 2;
}

/** Lowest and highest corner of all given parts. */
export function boundsOf(parts: readonly PlacedPart[]): {
  readonly low: readonly number[];
  readonly high: readonly number[];
  readonly size: readonly number[];
} {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const { shape } of parts) {
    shape.positions.forEach((value, k) => {
      low[k % 3] = Math.min(low[k % 3], value);
      high[k % 3] = Math.max(high[k % 3], value);
    });
  }
  return { low, high, size: high.map((value, axis) => value - low[axis]) };
}

/** How many triangles there are in all. */
export const trianglesOf = (parts: readonly PlacedPart[]): number =>
  parts.reduce((sum, { shape }) => sum + shape.indices.length / 3, 0);

/** The one part of that name. */
export function partNamed(parts: readonly PlacedPart[], name: string): PartShape {
  const found = parts.filter((part) => part.name === name);
  if (found.length !== 1)
    throw new Error(
      `Parts named ${name}: found ${found.length} in ${parts.map((p) => p.name)}, expected one`,
    );
  return found[0].shape;
}

/** Corners that are no numbers and indices that lead to no corner. */
export const isSound = ({ positions, indices, tubes }: PartShape): boolean =>
  positions.every(Number.isFinite) &&
  indices.every((index) => index < positions.length / 3) &&
  tubes.every(({ from, to, radius }) => [...from, ...to, radius].every(Number.isFinite));

/**
 * How often the solids of a shape wind around a place: 1 inside one of them, 2 inside two that overlap, 0 outside all.
 * The solid angles of its triangles, summed (Van Oosterom and Strackee's formula, from memory).
 */
export function windings({ positions, indices }: PartShape, [x, y, z]: readonly number[]): number {
  let sum = 0;
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => {
      const at = 3 * indices[k + corner];
      return [positions[at] - x, positions[at + 1] - y, positions[at + 2] - z];
    });
    const [la, lb, lc] = [a, b, c].map((p) => Math.hypot(...p));
    const dots = (p: number[], q: number[]) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
    const volume =
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
    sum += 2 * Math.atan2(volume, la * lb * lc + dots(a, b) * lc + dots(b, c) * la + dots(c, a) * lb);
  }
  return sum / (4 * Math.PI);
}

/** Places on the axes of a shape's tubes, from end to end, that no solid of it is around. */
export function axesOutside(shape: PartShape): readonly string[] {
  return shape.tubes.flatMap(({ from, to }) =>
    [0.03, 0.25, 0.5, 0.75, 0.97].flatMap((share) => {
      const place = from.map((value, axis) => value + (to[axis] - value) * share);
      return windings(shape, place) > 0.5 ? [] : [place.map((value) => value.toFixed(3)).join(' ')];
    }),
  );
}
