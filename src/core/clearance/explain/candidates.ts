import { add, mix, scale, subtract, type Vec3 } from '../../form/build/vector';
import { isInFrame, projectPoint } from '../../optics/project';
import type { Camera } from '../../optics/types';
import type { Look } from '../../sight/look';
import { type Mirror, reflected } from '../../sight/mirrors';
import { meets, type Ray, showsAlong } from '../../sight/rays';
import { type SightStage, type StagePart, worldOf } from '../../sight/stage';
import { rayThrough } from '../../sight/ways';

/** Places along the axis of a tube, and most triangles of a part, that are looked at. */
const ALONG_TUBE = 48;
const MOST_TRIANGLES = 400;

/** The parts of an item, those of which most was found first. */
export const partsOf = (
  { parts, firstPart }: SightStage,
  item: number,
  found: Look['direct'] | null,
): readonly StagePart[] =>
  parts
    .slice(firstPart[item], firstPart[item + 1])
    .sort((a, b) => (found ? found.partPixels[b.index] - found.partPixels[a.index] : 0) || a.index - b.index);

/** Rays across the pixels that are looked at, and down them. */
const LATTICE = 24;

/** Places in and on a part, metres: along the axes of its tubes, and the middles of its triangles. */
export function* placesOn(part: StagePart): Generator<Vec3, void, void> {
  const { positions, indices, tubes } = part.shape;
  for (const { from, to } of tubes)
    for (let k = 0; k < ALONG_TUBE; k += 1) yield worldOf(part, mix(from, to, (k + 0.5) / ALONG_TUBE));
  const count = indices.length / 3;
  const step = Math.max(1, Math.ceil(count / MOST_TRIANGLES));
  const corner = (index: number): Vec3 => [
    positions[index * 3],
    positions[index * 3 + 1],
    positions[index * 3 + 2],
  ];
  for (let k = 0; k < count; k += step) {
    const [a, b, c] = [0, 1, 2].map((n) => corner(indices[k * 3 + n]));
    yield worldOf(part, scale(add(a, add(b, c)), 1 / 3));
  }
}

/**
 * The same, and where rays spread over the pixels of a look meet the part: of a net, which owns no pixel, the middles of
 * its triangles may all lie beside a frame that it fills.
 */
export function* placesIn(seen: Look, part: StagePart): Generator<Vec3, void, void> {
  yield* placesOn(part);
  const { left, top, right, bottom } = seen.rect;
  for (let column = 0; column < LATTICE; column += 1)
    for (let row = 0; row < LATTICE; row += 1) {
      const x = left + ((column + 0.5) / LATTICE) * (right - left);
      const y = top + ((row + 0.5) / LATTICE) * (bottom - top);
      const ray = rayThrough(seen, x, y);
      const share = meets(part, ray);
      if (share < Infinity) yield along(ray, share);
    }
}

/** The place on a ray at a share of its direction. */
export const along = ({ origin, direction }: Ray, share: number): Vec3 =>
  add(origin, scale(direction, share));

/** Whether a place lies within a camera's delivered frame, whatever stands before it. */
export function isWithin(camera: Camera, place: Vec3): boolean {
  const projected = projectPoint(camera, place);
  return projected !== null && isInFrame(projected);
}

/** Where the lens sees a part through a place in or on it; null where something solid stands before it. */
export function seenThrough({ stage, camera }: Look, part: StagePart, place: Vec3): Vec3 | null {
  const { position } = camera.pose;
  const ray = { origin: position, direction: subtract(place, position) };
  if (!isWithin(camera, place) || !showsAlong(stage, ray, part, null, [])) return null;
  return along(ray, meets(part, ray));
}

/** The same by way of a mirror: where the line turns, and where it ends. */
export function seenInMirror(
  { stage, camera }: Look,
  mirror: Mirror & { readonly part: StagePart },
  part: StagePart,
  place: Vec3,
): { readonly turn: Vec3; readonly end: Vec3 } | null {
  const { position } = camera.pose;
  const image = reflected(place, mirror);
  const ray = { origin: position, direction: subtract(image, position) };
  if (!isWithin(camera, image) || !showsAlong(stage, ray, mirror.part, null, [])) return null;
  const turn = along(ray, meets(mirror.part, ray));
  const on = { origin: turn, direction: subtract(place, turn) };
  if (!showsAlong(stage, on, part, mirror.part, [])) return null;
  return { turn, end: along(on, meets(part, on)) };
}
