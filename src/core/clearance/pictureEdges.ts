import type { Vec3 } from '../form/build/vector';
import type { ItemForm, PartShape } from '../form/types';
import { distort, goodRadius } from '../optics/distortion';
import { cameraFromWorld } from '../optics/project';
import type { Camera, FrameShape } from '../optics/types';
import { NEAREST_METRES } from '../sight/clip';
import { worldOf } from '../sight/stage';
import { hypot } from '../units/steadyMath';

/** A place on an item, in the picture and before the camera. */
export interface EdgePlace {
  /** 0..1 of the delivered frame from its left edge. */
  readonly x: number;
  /** In camera coordinates: x right, y up, z forward, metres. */
  readonly at: Vec3;
}

/** The places of an item that lie farthest to the left and to the right in the picture. */
export interface PictureEdges {
  readonly left: EdgePlace;
  readonly right: EdgePlace;
}

/** Pairs of corners that a triangle's side joins, each once. */
const SIDES = new WeakMap<PartShape, readonly (readonly [number, number])[]>();

function sidesOf(shape: PartShape): readonly (readonly [number, number])[] {
  const known = SIDES.get(shape);
  if (known) return known;
  const { indices } = shape;
  const count = shape.positions.length / 3;
  const seen = new Set<number>();
  const sides: [number, number][] = [];
  for (let k = 0; k < indices.length; k += 3) {
    for (let c = 0; c < 3; c += 1) {
      const a = indices[k + c];
      const b = indices[k + ((c + 1) % 3)];
      const key = Math.min(a, b) * count + Math.max(a, b);
      if (seen.has(key)) continue;
      seen.add(key);
      sides.push([a, b]);
    }
  }
  SIDES.set(shape, sides);
  return sides;
}

const between = (p: Vec3, q: Vec3, share: number): Vec3 => [
  p[0] + (q[0] - p[0]) * share,
  p[1] + (q[1] - p[1]) * share,
  p[2] + (q[2] - p[2]) * share,
];

/** The stretch from p to q where a·x + b·y + c·z ≥ bound; null where there is none. */
function kept(
  [p, q]: readonly [Vec3, Vec3],
  b: number,
  c: number,
  bound: number,
): readonly [Vec3, Vec3] | null {
  const atP = b * p[1] + c * p[2] - bound;
  const atQ = b * q[1] + c * q[2] - bound;
  if (atP >= 0 && atQ >= 0) return [p, q];
  if (atP < 0 && atQ < 0) return null;
  const cut = between(p, q, atP / (atP - atQ));
  return atP >= 0 ? [p, cut] : [cut, q];
}

/** Sides of the item's triangles as far as they are before the camera, in camera coordinates. */
export function* sidesBefore(form: ItemForm, camera: Camera): Generator<readonly [Vec3, Vec3]> {
  for (const { shape, worldFromPart } of form.parts) {
    const { positions } = shape;
    const corners: Vec3[] = [];
    for (let k = 0; k < positions.length; k += 3) {
      const world = worldOf({ worldFromPart }, [positions[k], positions[k + 1], positions[k + 2]]);
      corners.push(cameraFromWorld(camera.pose, world));
    }
    for (const [a, b] of sidesOf(shape)) {
      const side = kept([corners[a], corners[b]], 0, 1, NEAREST_METRES);
      if (side) yield side;
    }
  }
}

/** Where the lens draws a place before the camera: x and y in halves of the frame; null where its model folds back. */
function drawn(frame: FrameShape, [x, y, z]: Vec3): readonly [number, number] | null {
  const { tanHalfWidth, tanHalfHeight, distortion } = frame;
  const tangents = [x / z, -y / z] as const;
  if (!distortion) return [tangents[0] / tanHalfWidth, tangents[1] / tanHalfHeight];
  if (hypot(tangents[0], tangents[1]) > goodRadius(distortion)) return null;
  const [drawnX, drawnY] = distort(distortion, tangents[0], tangents[1]);
  return [drawnX / tanHalfWidth, drawnY / tanHalfHeight];
}

/** How far right a place is in the picture, in halves of the frame; null outside of the frame's height. */
function across(frame: FrameShape, place: Vec3): number | null {
  const at = drawn(frame, place);
  return at && Math.abs(at[1]) <= 1 + 1e-12 ? at[0] : null;
}

/** Gathers the farthest of what it is shown. */
class Farthest {
  private left: EdgePlace | null = null;
  private right: EdgePlace | null = null;

  take(halves: number, at: Vec3): void {
    const x = 0.5 + halves / 2;
    if (!this.left || x < this.left.x) this.left = { x, at };
    if (!this.right || x > this.right.x) this.right = { x, at };
  }

  edges(): PictureEdges | null {
    return this.left && this.right ? { left: this.left, right: this.right } : null;
  }
}

/** Steps along a side that a distorting lens bends. */
const STEPS = 16;
/** Between two steps a bent side bulges by less than this, in halves of the frame. */
const BULGE = 0.02;
const HALVINGS = 48;
const THIRDS = 60;

interface BentSide {
  readonly side: readonly [Vec3, Vec3];
  readonly low: number;
  readonly high: number;
  /** Share of the side at which the step lies that goes farthest to either hand. */
  readonly lowAt: number;
  readonly highAt: number;
}

/** The shares of a side, its steps and where it comes into the frame's height, with how far right each is drawn. */
function stepsOf(
  frame: FrameShape,
  side: readonly [Vec3, Vec3],
): { readonly share: number; readonly halves: number }[] {
  const at = (share: number) => across(frame, between(side[0], side[1], share));
  const steps: { share: number; halves: number }[] = [];
  let before: number | null = null;
  for (let k = 0; k <= STEPS; k += 1) {
    const share = k / STEPS;
    const halves = at(share);
    if (k > 0 && (halves === null) !== (before === null)) {
      let [inside, outside] = halves === null ? [share - 1 / STEPS, share] : [share, share - 1 / STEPS];
      for (let halving = 0; halving < HALVINGS; halving += 1) {
        const middle = (inside + outside) / 2;
        if (at(middle) === null) outside = middle;
        else inside = middle;
      }
      const crossing = at(inside);
      if (crossing !== null) steps.push({ share: inside, halves: crossing });
    }
    if (halves !== null) steps.push({ share, halves });
    before = halves;
  }
  return steps;
}

/** The farthest that a bent side goes to one hand near one of its steps, by thirds. */
function refined(frame: FrameShape, side: readonly [Vec3, Vec3], near: number, hand: 1 | -1): number {
  const at = (share: number) => {
    const halves = across(frame, between(side[0], side[1], share));
    return halves === null ? Number.NEGATIVE_INFINITY : hand * halves;
  };
  let [from, to] = [Math.max(0, near - 1 / STEPS), Math.min(1, near + 1 / STEPS)];
  for (let round = 0; round < THIRDS; round += 1) {
    const third = (to - from) / 3;
    if (at(from + third) < at(to - third)) from += third;
    else to -= third;
  }
  const middle = (from + to) / 2;
  return at(middle) > at(near) ? middle : near;
}

function bentEdges(form: ItemForm, camera: Camera): PictureEdges | null {
  const { frame } = camera;
  const sides: BentSide[] = [];
  for (const side of sidesBefore(form, camera)) {
    const steps = stepsOf(frame, side);
    if (steps.length === 0) continue;
    const low = steps.reduce((least, step) => (step.halves < least.halves ? step : least));
    const high = steps.reduce((most, step) => (step.halves > most.halves ? step : most));
    sides.push({ side, low: low.halves, high: high.halves, lowAt: low.share, highAt: high.share });
  }
  let [lowest, highest] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { low, high } of sides) {
    lowest = Math.min(lowest, low);
    highest = Math.max(highest, high);
  }
  const farthest = new Farthest();
  const show = ([p, q]: readonly [Vec3, Vec3], share: number): void => {
    const place = between(p, q, share);
    const halves = across(frame, place);
    if (halves !== null) farthest.take(halves, place);
  };
  for (const { side, low, high, lowAt, highAt } of sides) {
    if (low <= lowest + BULGE) show(side, refined(frame, side, lowAt, -1));
    if (high >= highest - BULGE) show(side, refined(frame, side, highAt, 1));
  }
  return farthest.edges();
}

/**
 * How far an item reaches in the picture, were nothing before it: the outermost places of its triangles between the
 * frame's top and bottom, also beyond its left and right. A distorting lens bends the sides of triangles; those are
 * followed. Null when nothing of it is before the camera at the height of the frame.
 */
export function pictureEdges(form: ItemForm, camera: Camera): PictureEdges | null {
  const { frame } = camera;
  if (frame.distortion) return bentEdges(form, camera);
  const farthest = new Farthest();
  for (const side of sidesBefore(form, camera)) {
    const below = kept(side, -1, frame.tanHalfHeight, 0);
    const within = below && kept(below, 1, frame.tanHalfHeight, 0);
    for (const place of within ?? []) farthest.take(place[0] / place[2] / frame.tanHalfWidth, place);
  }
  return farthest.edges();
}

/**
 * How fast a place moves across the picture, in frame widths a metre, when it is moved by [right, up] of the camera.
 */
export function speedAcross(frame: FrameShape, at: Vec3, [right, up]: readonly [number, number]): number {
  const step = 1e-4 * at[2];
  const before = drawn(frame, [at[0] - right * step, at[1] - up * step, at[2]]);
  const after = drawn(frame, [at[0] + right * step, at[1] + up * step, at[2]]);
  return before && after ? (after[0] - before[0]) / (4 * step) : right / (2 * frame.tanHalfWidth * at[2]);
}
