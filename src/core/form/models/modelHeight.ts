import type { Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import { cos, sin } from '../../units/steadyMath';
import { modelShapes } from './modelShapes';
import { modelHeld } from './modelShelf';

type Model = Extract<Piece, { kind: 'model' }>;

/** A place on the roof in a standing thing's own frame. */
function inFrame({ at, headingDegrees }: Model, [x, z]: Spot): Spot {
  const radians = (headingDegrees * Math.PI) / 180;
  const [cosine, sine] = [cos(radians), sin(radians)];
  const [dx, dz] = [x - at[0], z - at[2]];
  return [dx * cosine + dz * sine, -dx * sine + dz * cosine];
}

/**
 * The height of a model's topmost surface over a place on the roof, metres; null where it has none there, or its file
 * is not at hand.
 */
export function modelHeightAt(model: Model, spot: Spot): number | null {
  const held = modelHeld(model.asset.sha256);
  if (!held) return null;
  const [x, z] = inFrame(model, spot);
  let highest: number | null = null;
  for (const { shape } of modelShapes(held, model)) {
    const { positions: p, indices } = shape;
    for (let k = 0; k < indices.length; k += 3) {
      const [a, b, c] = [indices[k] * 3, indices[k + 1] * 3, indices[k + 2] * 3];
      const area = (p[b] - p[a]) * (p[c + 2] - p[a + 2]) - (p[c] - p[a]) * (p[b + 2] - p[a + 2]);
      if (area === 0) continue;
      const toB = ((x - p[a]) * (p[c + 2] - p[a + 2]) - (p[c] - p[a]) * (z - p[a + 2])) / area;
      const toC = ((p[b] - p[a]) * (z - p[a + 2]) - (x - p[a]) * (p[b + 2] - p[a + 2])) / area;
      if (toB < 0 || toC < 0 || toB + toC > 1) continue;
      const height = p[a + 1] + toB * (p[b + 1] - p[a + 1]) + toC * (p[c + 1] - p[a + 1]);
      if (highest === null || height > highest) highest = height;
    }
  }
  return highest === null ? null : model.at[1] + highest;
}
