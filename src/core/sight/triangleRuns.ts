import type { PartShape } from '../form/types';

/** So many triangles make a run. Builders go round a thing in order, so those of a run lie together. */
export const RUN_TRIANGLES = 12;

/** The boxes are grown by this, metres, so that nothing is lost to rounding. */
const SLACK_METRES = 1e-6;

const KNOWN = new WeakMap<PartShape, Float64Array>();

function boxesOf({ positions, indices }: PartShape): Float64Array {
  const corners = RUN_TRIANGLES * 3;
  const count = Math.ceil(indices.length / corners);
  const boxes = new Float64Array(count * 6);
  for (let run = 0; run < count; run += 1) {
    const at = run * 6;
    boxes.fill(Infinity, at, at + 3).fill(-Infinity, at + 3, at + 6);
    for (let k = run * corners; k < Math.min(indices.length, (run + 1) * corners); k += 1) {
      for (let axis = 0; axis < 3; axis += 1) {
        const place = positions[indices[k] * 3 + axis];
        boxes[at + axis] = Math.min(boxes[at + axis], place - SLACK_METRES);
        boxes[at + axis + 3] = Math.max(boxes[at + axis + 3], place + SLACK_METRES);
      }
    }
  }
  return boxes;
}

/**
 * Boxes around runs of {@link RUN_TRIANGLES} triangles of a shape in its own frame, six numbers each: lowest x, y, z,
 * highest x, y, z. Worked out once for a shape, which keeps its triangles however it moves.
 */
export function triangleRuns(shape: PartShape): Float64Array {
  const known = KNOWN.get(shape);
  if (known) return known;
  const made = boxesOf(shape);
  KNOWN.set(shape, made);
  return made;
}
