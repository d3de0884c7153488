import { dotFrom, type Vec3 } from '../form/build/vector';
import type { Camera } from '../optics/types';
import { cornersOf } from './corners';
import type { PixelRect } from './filling';
import { type Grid, reachOf } from './grid';
import { type FacedMirror, reflected } from './mirrors';
import type { SightStage } from './stage';

/** Corners nearer than this to the eye's plane, metres, have no useful picture. */
const TOO_NEAR_METRES = 0.05;
/** Pixels that a rectangle is grown by, for rounding. */
const SLACK_PIXELS = 2;

/** The rectangle around the picture of some corners; null when none of what they hold can be in frame. */
export function rectAround(corners: readonly Vec3[], camera: Camera, grid: Grid): PixelRect | null {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  const { tanX, tanY } = reachOf(grid);
  // One bit for each side of the pyramid, and for behind: all corners beyond one of them, and nothing can show.
  let beyondAll = 31;
  let isAcross = false;
  const { position, right: across, up, forward } = camera.pose;
  for (const corner of corners) {
    const x = dotFrom(position, corner, across);
    const y = dotFrom(position, corner, up);
    const z = dotFrom(position, corner, forward);
    beyondAll &=
      (x > z * tanX ? 1 : 0) |
      (x < -z * tanX ? 2 : 0) |
      (y > z * tanY ? 4 : 0) |
      (y < -z * tanY ? 8 : 0) |
      (z < 0 ? 16 : 0);
    if (z < TOO_NEAR_METRES) {
      isAcross = true;
      continue;
    }
    const column = grid.axisX + (x / z) * grid.perTangentX;
    const row = grid.axisY - (y / z) * grid.perTangentY;
    left = Math.min(left, column);
    right = Math.max(right, column);
    top = Math.min(top, row);
    bottom = Math.max(bottom, row);
  }
  if (beyondAll !== 0) return null;
  if (isAcross) return { left: 0, top: 0, right: grid.width, bottom: grid.height };
  const rect = {
    left: Math.max(0, Math.floor(left) - SLACK_PIXELS),
    top: Math.max(0, Math.floor(top) - SLACK_PIXELS),
    right: Math.min(grid.width, Math.ceil(right) + SLACK_PIXELS),
    bottom: Math.min(grid.height, Math.ceil(bottom) + SLACK_PIXELS),
  };
  return rect.left < rect.right && rect.top < rect.bottom ? rect : null;
}

const areaOf = (rect: PixelRect): number => (rect.right - rect.left) * (rect.bottom - rect.top);

/** The rectangle around two. */
export const unionOf = (a: PixelRect, b: PixelRect): PixelRect => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

/** The pixels that two rectangles share; null where there are none. */
export function meetingOf(a: PixelRect, b: PixelRect): PixelRect | null {
  const left = Math.max(a.left, b.left);
  const top = Math.max(a.top, b.top);
  const right = Math.min(a.right, b.right);
  const bottom = Math.min(a.bottom, b.bottom);
  return left < right && top < bottom ? { left, top, right, bottom } : null;
}

/** Items to be asked together, and the pixels that they and their images can touch. */
export interface Group {
  readonly items: ReadonlySet<number>;
  readonly rect: PixelRect;
}

/** A look costs about this many pixels before it has drawn one: near things are asked together. */
const LOOK_PIXELS = 12000;

type Corners = readonly (readonly Vec3[])[];

const cornersOfItem = ({ parts, firstPart }: SightStage, item: number): Corners =>
  parts.slice(firstPart[item], firstPart[item + 1]).map(cornersOf);

const rectsAround = (all: Corners, camera: Camera, grid: Grid): readonly PixelRect[] =>
  all.flatMap((corners) => rectAround(corners, camera, grid) ?? []);

/** The pixels that each part of an item can touch, seen directly; none for those that cannot touch the frame. */
export const partRectsOf = (
  stage: SightStage,
  item: number,
  camera: Camera,
  grid: Grid,
): readonly PixelRect[] => rectsAround(cornersOfItem(stage, item), camera, grid);

/** The pixels that the images of an item's parts can touch in some mirrors, whose faces show nothing beyond themselves. */
function imageRectsOf(
  stage: SightStage,
  item: number,
  camera: Camera,
  grid: Grid,
  mirrors: readonly FacedMirror[],
): readonly PixelRect[] {
  if (mirrors.length === 0) return [];
  const all = cornersOfItem(stage, item);
  return mirrors.flatMap((mirror) => {
    const face = rectAround(cornersOf(mirror.part), camera, grid);
    if (!face) return [];
    const images = all.map((corners) => corners.map((corner) => reflected(corner, mirror)));
    return rectsAround(images, camera, grid).flatMap((rect) => meetingOf(rect, face) ?? []);
  });
}

/** The pixels that each part of an item and each of its images can touch; none for those that cannot touch the frame. */
export const rectsOf = (
  stage: SightStage,
  item: number,
  camera: Camera,
  grid: Grid,
  mirrors: readonly FacedMirror[],
): readonly PixelRect[] => [
  ...partRectsOf(stage, item, camera, grid),
  ...imageRectsOf(stage, item, camera, grid, mirrors),
];

/**
 * Sorts items into groups whose rectangles are worth asking apart. Items that cannot touch the frame are in none.
 */
export const groupsOf = (
  stage: SightStage,
  items: ReadonlySet<number>,
  camera: Camera,
  grid: Grid,
  mirrors: readonly FacedMirror[],
): readonly Group[] =>
  grouped(Array.from(items, (item) => [item, rectsOf(stage, item, camera, grid, mirrors)] as const));

/** Sorts items, each with the pixels to ask, into groups that are worth asking apart. */
export function grouped(
  items: readonly (readonly [item: number, rects: readonly PixelRect[]])[],
): readonly Group[] {
  const groups: { items: Set<number>; rect: PixelRect }[] = [];
  for (const [item, rects] of items) {
    const rect = rects.reduce<PixelRect | null>((all, each) => (all ? unionOf(all, each) : each), null);
    if (!rect) continue;
    let merged = { items: new Set([item]), rect };
    // Take in every group that is cheaper asked together, until none is.
    for (let k = 0; k < groups.length; k += 1) {
      const together = unionOf(groups[k].rect, merged.rect);
      if (areaOf(together) > areaOf(groups[k].rect) + areaOf(merged.rect) + LOOK_PIXELS) continue;
      merged = { items: new Set([...groups[k].items, ...merged.items]), rect: together };
      groups.splice(k, 1);
      k = -1;
    }
    groups.push(merged);
  }
  return groups;
}
