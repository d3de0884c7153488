import type { Piece } from '../../plan/schema/pieces';
import type { PartShape, PlacedPart } from '../types';
import type { HeldModel, ModelChunk, ModelSkin } from './heldModel';

type Model = Extract<Piece, { kind: 'model' }>;
type Vector = readonly [number, number, number];

/** The file's axes as the roof's: what lies along z up comes to lie along y up. */
const upright = (up: Model['up'], [x, y, z]: Vector): Vector => (up === 'y' ? [x, y, z] : [x, z, -y]);

/** The box that a model takes up: [width, height, depth] in metres, in its own frame on the roof. */
export function modelSize({
  extent,
  metresPerUnit,
  up,
}: Pick<Model, 'extent' | 'metresPerUnit' | 'up'>): Vector {
  const { lowest, highest } = extent;
  const [x, y, z] = lowest.map((low, axis) => Math.abs(highest[axis] - low) * metresPerUnit);
  return up === 'y' ? [x, y, z] : [x, z, y];
}

interface Kept {
  readonly key: string;
  readonly parts: readonly Omit<PlacedPart, 'worldFromPart'>[];
}

/** Shapes by model, for the last size that was asked: moving and turning a model leaves its shapes alone. */
const keptShapes = new WeakMap<HeldModel, Kept>();

/** The model's parts in metres, in its own frame: the middle of its foot at the origin, y up. */
export function modelShapes(held: HeldModel, model: Model): Kept['parts'] {
  const { up, metresPerUnit, extent } = model;
  const key = [up, metresPerUnit, ...extent.lowest, ...extent.highest].join(' ');
  const kept = keptShapes.get(held);
  if (kept?.key === key) return kept.parts;
  const { lowest, highest } = extent;
  const middle = lowest.map((low, axis) => (low + highest[axis]) / 2);
  const foot = [middle[0], middle[1], middle[2]];
  foot[up === 'y' ? 1 : 2] = lowest[up === 'y' ? 1 : 2];
  const offset: Vector = [held.centre[0] - foot[0], held.centre[1] - foot[1], held.centre[2] - foot[2]];
  const parts = held.chunks.map((chunk) => ({
    name: chunk.name,
    shape: shapeOf(chunk, up, metresPerUnit, offset),
  }));
  keptShapes.set(held, { key, parts });
  return parts;
}

function shapeOf(chunk: ModelChunk, up: Model['up'], scale: number, offset: Vector): PartShape {
  const { positions, indices, isCut, skin } = chunk;
  const own = new Float32Array(positions.length);
  const [ox, oy, oz] = offset;
  for (let k = 0; k < positions.length; k += 3) {
    const x = (positions[k] + ox) * scale;
    const y = (positions[k + 1] + oy) * scale;
    const z = (positions[k + 2] + oz) * scale;
    own[k] = x;
    own[k + 1] = up === 'y' ? y : z;
    own[k + 2] = up === 'y' ? z : -y;
  }
  return {
    positions: own,
    indices,
    tubes: [],
    substance: 'render',
    colour: null,
    openness: null,
    mirror: null,
    smooth: skin?.normals !== null,
    ...(isCut ? { isOpen: true } : {}),
    ...(skin ? { skin: up === 'y' ? skin : turnedUp(skin) } : {}),
  };
}

function turnedUp(skin: ModelSkin): ModelSkin {
  const { normals } = skin;
  if (!normals) return skin;
  const own = new Float32Array(normals.length);
  for (let k = 0; k < normals.length; k += 3) {
    own.set(upright('z', [normals[k], normals[k + 1], normals[k + 2]]), k);
  }
  return { ...skin, normals: own };
}
