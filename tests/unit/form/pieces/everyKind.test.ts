import { safeParse } from 'valibot';
import { expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { piece as schema } from '../../../../src/core/plan/schema/pieces';
import { isSound, openEdges, SHEETS, signedVolume, trianglesOf } from '../solids';
import { ROOFTOP, SKYLINE } from './rooftop';

const GROUND = { surface: 'concrete', wetness: 'wet down' } as const;
const named = (pieces: readonly Piece[]) => pieces.map((piece) => [piece.label, piece] as const);

test.each(named([...ROOFTOP, ...SKYLINE]))('%s: the record is one that a plan may hold', (_, piece) => {
  expect(safeParse(schema, piece).success).toBe(true);
});

test.each(named([...ROOFTOP, ...SKYLINE]))('%s: solids are closed and face outwards', (_, piece) => {
  const parts = pieceParts(piece, GROUND);
  expect(parts.length).toBeGreaterThan(0);
  expect(new Set(parts.map((part) => part.name)).size).toBe(parts.length);
  for (const { name, shape, worldFromPart } of parts) {
    expect(isSound(shape), name).toBe(true);
    expect(worldFromPart, name).toBeNull();
    expect(shape.indices.length, name).toBeGreaterThan(0);
    if (SHEETS.test(name)) continue;
    expect(openEdges(shape), name).toEqual([]);
    expect(signedVolume(shape), name).toBeGreaterThan(0);
  }
});

// Two solids of one part that face different ways could cancel in the sum: take them apart.
test.each(named([...ROOFTOP, ...SKYLINE]))('%s: each solid of a part faces outwards', (_, piece) => {
  for (const { name, shape } of pieceParts(piece, GROUND)) {
    if (SHEETS.test(name)) continue;
    for (const volume of volumesOfSolids(shape)) expect(volume, name).toBeGreaterThan(0);
  }
});

test('the same record gives the same triangles', () => {
  for (const piece of [...ROOFTOP, ...SKYLINE])
    expect(pieceParts(piece, GROUND)).toEqual(pieceParts(structuredClone(piece), GROUND));
});

test('a dressed roof with twenty buildings around it stays below 15,000 triangles', () => {
  const count = [...ROOFTOP, ...SKYLINE].reduce((sum, p) => sum + trianglesOf(pieceParts(p, GROUND)), 0);
  expect(count).toBeLessThanOrEqual(15_000);
});

/** Volumes of the connected solids in a shape, corners welded. */
function volumesOfSolids(shape: Parameters<typeof signedVolume>[0]): readonly number[] {
  const { positions, indices } = shape;
  const group = new Map<string, string>();
  const root = (key: string): string => {
    let top = key;
    for (let up = group.get(top); up !== undefined && up !== top; up = group.get(top)) top = up;
    return top;
  };
  const key = (index: number) =>
    [0, 1, 2].map((axis) => Math.round(positions[3 * index + axis] * 1e5) + 0).join(' ');
  for (let k = 0; k < indices.length; k += 3) {
    const [a, b, c] = [0, 1, 2].map((corner) => root(key(indices[k + corner])));
    for (const each of [a, b, c]) group.set(each, a);
  }
  const solids = new Map<string, number[]>();
  for (let k = 0; k < indices.length; k += 3) {
    const home = root(key(indices[k]));
    const solid = solids.get(home) ?? [];
    solid.push(indices[k], indices[k + 1], indices[k + 2]);
    solids.set(home, solid);
  }
  return [...solids.values()].map((solid) => signedVolume({ ...shape, indices: Uint32Array.from(solid) }));
}
