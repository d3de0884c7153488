import type { PartShape, PlacedPart } from '../../../../src/core/form/types';

const corner = (shape: PartShape, index: number): readonly [number, number, number] => [
  shape.positions[index * 3],
  shape.positions[index * 3 + 1],
  shape.positions[index * 3 + 2],
];

/** Directed edges that have no partner running the other way, corners welded by place (to 10 µm): 0 for closed solids. */
export function openEdges(shape: PartShape): number {
  const name = (index: number): string =>
    corner(shape, index)
      .map((value) => Math.round(value * 1e5))
      .join(' ');
  const balance = new Map<string, number>();
  for (let k = 0; k < shape.indices.length; k += 3) {
    const corners = [0, 1, 2].map((c) => name(shape.indices[k + c]));
    corners.forEach((from, c) => {
      const to = corners[(c + 1) % 3];
      if (from === to) return;
      const forward = from < to;
      const key = forward ? `${from}|${to}` : `${to}|${from}`;
      balance.set(key, (balance.get(key) ?? 0) + (forward ? 1 : -1));
    });
  }
  return [...balance.values()].reduce((sum, value) => sum + Math.abs(value), 0);
}

/** Volume that the triangles enclose, m³: positive when they face outwards. */
function volume(shape: PartShape): number {
  let sum = 0;
  const origin = corner(shape, 0);
  for (let k = 0; k < shape.indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((j) =>
      corner(shape, shape.indices[k + j]).map((value, axis) => value - origin[axis]),
    );
    sum +=
      a[0] * (b[1] * c[2] - b[2] * c[1]) +
      a[1] * (b[2] * c[0] - b[0] * c[2]) +
      a[2] * (b[0] * c[1] - b[1] * c[0]);
  }
  return sum / 6;
}

/** Volume of each connected piece of a shape by itself, corners welded by place. */
export function pieceVolumes(shape: PartShape): number[] {
  const parent = new Map<string, string>();
  const name = (index: number): string =>
    corner(shape, index)
      .map((value) => Math.round(value * 1e5))
      .join(' ');
  const root = (key: string): string => {
    let at = key;
    for (let up = parent.get(at); up !== undefined && up !== at; up = parent.get(at)) at = up;
    return at;
  };
  for (let k = 0; k < shape.indices.length; k += 3) {
    const keys = [0, 1, 2].map((c) => name(shape.indices[k + c]));
    for (const key of keys) if (!parent.has(key)) parent.set(key, key);
    parent.set(root(keys[1]), root(keys[0]));
    parent.set(root(keys[2]), root(keys[0]));
  }
  const groups = new Map<string, number[]>();
  for (let k = 0; k < shape.indices.length; k += 3) {
    const key = root(name(shape.indices[k]));
    groups.set(key, [...(groups.get(key) ?? []), ...shape.indices.slice(k, k + 3)]);
  }
  return [...groups.values()].map((indices) => volume({ ...shape, indices: Uint32Array.from(indices) }));
}

/** Lowest and highest corner of parts, world metres. */
export function extent(parts: readonly PlacedPart[]): { readonly low: number[]; readonly high: number[] } {
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  for (const { shape } of parts) {
    shape.positions.forEach((value, k) => {
      low[k % 3] = Math.min(low[k % 3], value);
      high[k % 3] = Math.max(high[k % 3], value);
    });
  }
  return { low, high };
}

/** Middle of the box round a part. */
export function middleOf(part: PlacedPart): number[] {
  const { low, high } = extent([part]);
  return low.map((value, axis) => (value + high[axis]) / 2);
}

export const triangles = (parts: readonly PlacedPart[]): number =>
  parts.reduce((sum, { shape }) => sum + shape.indices.length / 3, 0);

export function partsNamed(parts: readonly PlacedPart[], name: string): PlacedPart[] {
  return parts.filter((part) => part.name === name);
}
