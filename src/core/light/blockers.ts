import type { Vec3 } from '../form/build/vector';
import { filledBy } from '../sight/closed';
import { layersCrossed, meetsBefore, type Ray } from '../sight/rays';
import { type SightStage, type StagePart, worldOf } from '../sight/stage';

/** Upright boxes in a row, six numbers each: lowest x, y, z, highest x, y, z; world metres. */
type Boxes = Float64Array;

/** All that may stand in the light at one instant, with boxes around items and around their parts. */
export interface Blockers {
  readonly stage: SightStage;
  readonly itemBoxes: Boxes;
  readonly partBoxes: Boxes;
}

const boxesKept = new WeakMap<StagePart, readonly number[]>();

/** The upright box in the world around a part's own box. */
function boxOf(part: StagePart): readonly number[] {
  const known = boxesKept.get(part);
  if (known) return known;
  const { low, high } = filledBy(part.shape);
  const box = [Infinity, Infinity, Infinity, -Infinity, -Infinity, -Infinity];
  for (let corner = 0; corner < 8; corner += 1) {
    const place = worldOf(part, [
      corner & 1 ? high[0] : low[0],
      corner & 2 ? high[1] : low[1],
      corner & 4 ? high[2] : low[2],
    ]);
    for (let axis = 0; axis < 3; axis += 1) {
      box[axis] = Math.min(box[axis], place[axis]);
      box[axis + 3] = Math.max(box[axis + 3], place[axis]);
    }
  }
  boxesKept.set(part, box);
  return box;
}

/** The blockers of a stage. Parts that it shares with an earlier stage keep their boxes. */
export function blockersOf(stage: SightStage): Blockers {
  const partBoxes = new Float64Array(stage.parts.length * 6);
  const itemBoxes = new Float64Array(stage.forms.length * 6);
  for (let item = 0; item < stage.forms.length; item += 1) {
    const at = item * 6;
    itemBoxes.fill(Infinity, at, at + 3).fill(-Infinity, at + 3, at + 6);
    for (let part = stage.firstPart[item]; part < stage.firstPart[item + 1]; part += 1) {
      const box = boxOf(stage.parts[part]);
      partBoxes.set(box, part * 6);
      for (let axis = 0; axis < 3; axis += 1) {
        itemBoxes[at + axis] = Math.min(itemBoxes[at + axis], box[axis]);
        itemBoxes[at + axis + 3] = Math.max(itemBoxes[at + axis + 3], box[axis + 3]);
      }
    }
  }
  return { stage, itemBoxes, partBoxes };
}

/** One over a stretch of the way; of none, so much that any border counts as passed at once or never. */
const inverse = (stretch: number): number => (stretch === 0 ? 1e15 : 1 / stretch);

/** The numbers of the boxes among `first` to `last` that come within `reach` metres of the way; it may name too many. */
function boxesAlong(
  boxes: Boxes,
  first: number,
  last: number,
  from: Vec3,
  to: Vec3,
  reach: number,
  visit: (box: number) => void,
): void {
  const [x, y, z] = from;
  const perX = inverse(to[0] - x);
  const perY = inverse(to[1] - y);
  const perZ = inverse(to[2] - z);
  for (let box = first; box < last; box += 1) {
    const at = box * 6;
    const lowX = (boxes[at] - reach - x) * perX;
    const highX = (boxes[at + 3] + reach - x) * perX;
    let enters = Math.min(lowX, highX);
    let leaves = Math.max(lowX, highX);
    if (enters > 1 || leaves < 0) continue;
    const lowY = (boxes[at + 1] - reach - y) * perY;
    const highY = (boxes[at + 4] + reach - y) * perY;
    enters = Math.max(enters, Math.min(lowY, highY));
    leaves = Math.min(leaves, Math.max(lowY, highY));
    if (enters > leaves || enters > 1 || leaves < 0) continue;
    const lowZ = (boxes[at + 2] - reach - z) * perZ;
    const highZ = (boxes[at + 5] + reach - z) * perZ;
    enters = Math.max(enters, Math.min(lowZ, highZ));
    leaves = Math.min(leaves, Math.max(lowZ, highZ));
    if (enters <= leaves && enters <= 1 && leaves >= 0) visit(box);
  }
}

/** The parts that a bundle of rays may meet, `reach` metres around the way from one place to another. */
export function partsAlong(
  { stage, itemBoxes, partBoxes }: Blockers,
  from: Vec3,
  to: Vec3,
  reach: number,
  isIgnored: (part: StagePart) => boolean,
): StagePart[] {
  const found: StagePart[] = [];
  const ask = (part: number): void => {
    if (!isIgnored(stage.parts[part])) found.push(stage.parts[part]);
  };
  boxesAlong(itemBoxes, 0, stage.forms.length, from, to, reach, (item) => {
    boxesAlong(partBoxes, stage.firstPart[item], stage.firstPart[item + 1], from, to, reach, ask);
  });
  return found;
}

/** What lies nearer than this to the place that is lit is that place's own surface, metres. */
const SURFACE_METRES = 0.001;

/**
 * The share of the light that gets from one place to another past these parts: nothing past a solid, its openness
 * through each crossing of a porous layer (wire mesh, a net, glass), as seen square on.
 */
export function passingShare(parts: readonly StagePart[], from: Vec3, to: Vec3): number {
  if (parts.length === 0) return 1;
  const direction: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const ray: Ray = { origin: from, direction };
  const metres = Math.sqrt(
    direction[0] * direction[0] + direction[1] * direction[1] + direction[2] * direction[2],
  );
  const until = 1 - SURFACE_METRES / Math.max(metres, SURFACE_METRES);
  let share = 1;
  for (const part of parts) {
    const { openness } = part.shape;
    if (openness === null) {
      if (meetsBefore(part, ray, until)) return 0;
      continue;
    }
    for (let layers = layersCrossed(part, ray, until); layers > 0; layers -= 1) share *= openness;
  }
  return share;
}
