import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import { NEAREST_METRES } from './clip';
import { cutPolygon } from './cutting';
import { cornersBefore, type SightStage, type StagePart } from './stage';

/** Corners in camera coordinates, used anew by every part. */
let corners = new Float64Array(3 * 256);
/** A triangle that is cut, and what a cut leaves of it: each of five planes adds one corner at most. */
let polygon = new Float64Array(3 * 16);
let remains = new Float64Array(3 * 16);

/** Whether any of what lies on both sides of some planes is inside of all. */
function isCutInside(a: number, b: number, c: number, tanX: number, tanY: number): boolean {
  for (const [k, corner] of [a, b, c].entries())
    for (let axis = 0; axis < 3; axis += 1) polygon[3 * k + axis] = corners[3 * corner + axis];
  let count = 3;
  for (const [x, y, z, bound] of [
    [0, 0, 1, NEAREST_METRES],
    [1, 0, tanX, 0],
    [-1, 0, tanX, 0],
    [0, 1, tanY, 0],
    [0, -1, tanY, 0],
  ]) {
    let [low, high] = [0, 0];
    for (let k = 0; k < 3 * count; k += 3) {
      const value = x * polygon[k] + y * polygon[k + 1] + z * polygon[k + 2] - bound;
      low = Math.min(low, value);
      high = Math.max(high, value);
    }
    if (high <= 0) return false;
    if (low >= 0) continue;
    count = cutPolygon(polygon, count, x, y, z, bound, remains);
    [polygon, remains] = [remains, polygon];
    if (count < 3) return false;
  }
  return true;
}

function partEnters(part: StagePart, { pose, frame }: Camera): boolean {
  const { tanHalfWidth: tanX, tanHalfHeight: tanY } = frame;
  const [x, y, z] = cameraFromWorld(pose, part.centre);
  const r = part.radius;
  if (z + r < NEAREST_METRES) return false;
  if (Math.abs(x) - z * tanX > r * Math.sqrt(1 + tanX * tanX)) return false;
  if (Math.abs(y) - z * tanY > r * Math.sqrt(1 + tanY * tanY)) return false;
  const { positions, indices } = part.shape;
  if (corners.length < positions.length) corners = new Float64Array(2 * positions.length);
  cornersBefore(part, pose, corners);
  const sides = (corner: number): number => {
    const k = 3 * corner;
    const reachX = tanX * corners[k + 2];
    const reachY = tanY * corners[k + 2];
    return (
      (corners[k + 2] <= NEAREST_METRES ? 1 : 0) |
      (corners[k] <= -reachX ? 2 : 0) |
      (corners[k] >= reachX ? 4 : 0) |
      (corners[k + 1] <= -reachY ? 8 : 0) |
      (corners[k + 1] >= reachY ? 16 : 0)
    );
  };
  for (let k = 0; k < indices.length; k += 3) {
    const a = sides(indices[k]);
    const b = sides(indices[k + 1]);
    const c = sides(indices[k + 2]);
    if (a === 0 || b === 0 || c === 0) return true;
    if ((a & b & c) !== 0) continue;
    if (isCutInside(indices[k], indices[k + 1], indices[k + 2], tanX, tanY)) return true;
  }
  return false;
}

/**
 * Whether any of an item is inside a camera's frame, as `outsideOf` has it, which also measures: this is for those who
 * ask thousands of cameras. For a lens that bends nothing.
 */
export function entersFrame({ parts, firstPart }: SightStage, item: number, camera: Camera): boolean {
  for (let index = firstPart[item]; index < firstPart[item + 1]; index += 1)
    if (partEnters(parts[index], camera)) return true;
  return false;
}
