import type { PartShape, PlacedPart } from '../../core/form/types';
import { looksAlike, MOST_STRETCHES } from './skinned';

/** Parts of an item that look alike and move as one: drawn in one go. */
export interface Batch {
  readonly shapes: readonly PartShape[];
  readonly worldFromPart: PlacedPart['worldFromPart'];
}

const known = new WeakMap<readonly PlacedPart[], readonly Batch[]>();

/** The parts gathered into batches, in the order of their first parts; remembered for as long as the parts are. */
export function batchesOf(parts: readonly PlacedPart[]): readonly Batch[] {
  const found = known.get(parts);
  if (found) return found;
  const batches: { shapes: PartShape[]; worldFromPart: PlacedPart['worldFromPart'] }[] = [];
  for (const { shape, worldFromPart } of parts) {
    const alike = batches.find(
      (batch) =>
        batch.worldFromPart === worldFromPart &&
        looksLike(batch.shapes[0], shape) &&
        (!shape.skin || batch.shapes.length < MOST_STRETCHES),
    );
    if (alike) alike.shapes.push(shape);
    else batches.push({ shapes: [shape], worldFromPart });
  }
  known.set(parts, batches);
  return batches;
}

function looksLike(a: PartShape, b: PartShape): boolean {
  return (
    a.substance === b.substance &&
    a.colour === b.colour &&
    a.smooth === b.smooth &&
    (a.mirror === null) === (b.mirror === null) &&
    (a.skin && b.skin ? looksAlike(a.skin, b.skin) : a.skin === b.skin)
  );
}
