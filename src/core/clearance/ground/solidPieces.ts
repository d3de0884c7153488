import { cross, dot, length, scale, subtract, type Vec3 } from '../../form/build/vector';
import type { PartShape } from '../../form/types';
import { solidOf } from '../../sight/closed';

/** Corners nearer than this are one corner, metres. */
const WELD_METRES = 1e-5;
/** How far a corner may be out of a plane and still lie in it, metres. */
const FLAT_METRES = 2e-5;
/** Beyond so many faces nobody asks whether a piece is convex: what covers well is a box, a wall, a drum. */
const MOST_FACES = 200;

/** What of a shape hangs together, in its own frame. */
export interface SolidPiece {
  readonly corners: readonly Vec3[];
  /** Pairs of corners that a triangle's side joins, each once, without those inside a flat face. */
  readonly sides: readonly (readonly [number, number])[];
  /** Its faces as planes, a·x + b·y + c·z ≤ d inside of it, where it is a closed convex solid; else null. */
  readonly planes: readonly (readonly [Vec3, number])[] | null;
}

const KNOWN = new WeakMap<PartShape, readonly SolidPiece[]>();

/** The pieces of a shape that hang together. */
export function solidPieces(shape: PartShape): readonly SolidPiece[] {
  const known = KNOWN.get(shape);
  if (known) return known;
  const { positions, indices } = shape;
  const places = new Map<string, number>();
  const corners: Vec3[] = [];
  const cell = (value: number): number => Math.round(value / WELD_METRES);
  const welded = Array.from({ length: positions.length / 3 }, (_, k) => {
    const at: Vec3 = [positions[k * 3], positions[k * 3 + 1], positions[k * 3 + 2]];
    const key = `${cell(at[0])} ${cell(at[1])} ${cell(at[2])}`;
    const place = places.get(key) ?? corners.length;
    if (place === corners.length) {
      places.set(key, place);
      corners.push(at);
    }
    return place;
  });
  const parent = corners.map((_, k) => k);
  const rootOf = (k: number): number => {
    let root = k;
    while (parent[root] !== root) root = parent[root];
    parent[k] = root;
    return root;
  };
  for (let k = 0; k < indices.length; k += 3) {
    const root = rootOf(welded[indices[k]]);
    parent[rootOf(welded[indices[k + 1]])] = root;
    parent[rootOf(welded[indices[k + 2]])] = root;
  }
  const faces = new Map<number, [number, number, number][]>();
  for (let k = 0; k < indices.length; k += 3) {
    const face: [number, number, number] = [
      welded[indices[k]],
      welded[indices[k + 1]],
      welded[indices[k + 2]],
    ];
    const root = rootOf(face[0]);
    const list = faces.get(root);
    if (list) list.push(face);
    else faces.set(root, [face]);
  }
  const isClosed = solidOf(shape).isClosed;
  const pieces = [...faces.values()].map((list) => pieceOf(corners, list, isClosed));
  KNOWN.set(shape, pieces);
  return pieces;
}

function pieceOf(
  all: readonly Vec3[],
  faces: readonly (readonly [number, number, number])[],
  isClosed: boolean,
): SolidPiece {
  const numbers = new Map<number, number>();
  const corners: Vec3[] = [];
  const numberOf = (k: number): number => {
    const known = numbers.get(k);
    if (known !== undefined) return known;
    numbers.set(k, corners.length);
    corners.push(all[k]);
    return corners.length - 1;
  };
  const normals: (Vec3 | null)[] = [];
  const bySide = new Map<string, { readonly ends: readonly [number, number]; readonly faces: number[] }>();
  for (const [place, face] of faces.entries()) {
    const [a, b, c] = face.map(numberOf);
    const across = cross(subtract(corners[b], corners[a]), subtract(corners[c], corners[a]));
    const size = length(across);
    normals.push(size > 1e-12 ? scale(across, 1 / size) : null);
    for (const [from, to] of [
      [a, b],
      [b, c],
      [c, a],
    ]) {
      const key = from < to ? `${from} ${to}` : `${to} ${from}`;
      const side = bySide.get(key);
      if (side) side.faces.push(place);
      else bySide.set(key, { ends: [from, to], faces: [place] });
    }
  }
  const isInner = ([a, b, ...more]: readonly number[]): boolean => {
    const [m, n] = [normals[a], b === undefined ? null : normals[b]];
    return more.length === 0 && m !== null && n !== null && dot(m, n) > 1 - 1e-9;
  };
  const sides = [...bySide.values()].filter((side) => !isInner(side.faces)).map(({ ends }) => ends);
  const isShut = isClosed && [...bySide.values()].every((side) => side.faces.length % 2 === 0);
  return {
    corners,
    sides,
    planes: isShut
      ? planesOf(
          corners,
          faces.map((face) => numberOf(face[0])),
          normals,
        )
      : null,
  };
}

/** The planes of a convex solid; null where a corner stands out from one of its faces. */
function planesOf(
  corners: readonly Vec3[],
  onFace: readonly number[],
  normals: readonly (Vec3 | null)[],
): SolidPiece['planes'] {
  if (normals.length > MOST_FACES) return null;
  const planes: [Vec3, number][] = [];
  for (const [face, normal] of normals.entries()) {
    if (!normal) continue;
    const reach = dot(normal, corners[onFace[face]]);
    if (planes.some(([other, at]) => dot(other, normal) > 1 - 1e-12 && Math.abs(at - reach) < FLAT_METRES))
      continue;
    if (corners.some((corner) => dot(normal, corner) > reach + FLAT_METRES)) return null;
    planes.push([normal, reach - FLAT_METRES]);
  }
  return planes;
}
