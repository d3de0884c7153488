import type { PartShape, PlacedPart } from '../../../../src/core/form/types';
import { boundsOf, signedVolume } from '../solids';

const corner = (shape: PartShape, index: number): readonly [number, number, number] => [
  shape.positions[index * 3],
  shape.positions[index * 3 + 1],
  shape.positions[index * 3 + 2],
];

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
  return [...groups.values()].map((indices) =>
    signedVolume({ ...shape, indices: Uint32Array.from(indices) }),
  );
}

/** Middle of the box round a part. */
export function middleOf(part: PlacedPart): number[] {
  const { low, high } = boundsOf([part]);
  return low.map((value, axis) => (value + high[axis]) / 2);
}

/** All parts of that name. */
export function partsNamed(parts: readonly PlacedPart[], name: string): PlacedPart[] {
  return parts.filter((part) => part.name === name);
}
