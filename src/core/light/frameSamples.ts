import { add, mix, scale, type Vec3 } from '../form/build/vector';
import type { Camera } from '../optics/types';
import type { PixelRect } from '../sight/filling';
import { type Grid, sampleHeight } from '../sight/grid';
import type { Look } from '../sight/look';
import type { Ray } from '../sight/rays';
import { rectsOf, unionOf } from '../sight/rects';
import { type SightStage, type StagePart, worldOf } from '../sight/stage';
import { isSeenAt, onScreen } from '../sight/ways';

/** A pixel that shows a part, or a place of a part that is thinner than pixels. */
export interface Sample {
  readonly x: number;
  readonly y: number;
  /** Where on the part, for what is too thin for a ray; null where a ray through the pixel finds it. */
  readonly at: Vec3 | null;
}

/** The ray through a place of the picture, pixels of the grid. */
export function rayAt({ grid, camera }: Look, x: number, y: number): Ray {
  const { position, right, up, forward } = camera.pose;
  const across = (x - grid.axisX) / grid.perTangentX;
  const rise = -(y - grid.axisY) / grid.perTangentY;
  return { origin: position, direction: add(forward, add(scale(right, across), scale(up, rise))) };
}

/** The ray through the sample of a pixel. */
export const rayOfPixel = (seen: Look, x: number, y: number): Ray =>
  rayAt(seen, x + 0.5, y + sampleHeight(x));

/** Samples of a part at most. */
const MOST_SAMPLES = 12;
/** Places along a thin member that are tried. */
const ALONG = 9;

/** The pixels in which some items show, by part number; each column's in the frame. */
export function pixelsByPart(seen: Look, items: ReadonlySet<number>): ReadonlyMap<number, readonly number[]> {
  const { buffer, rect, itemOfPart, grid } = seen;
  const found = new Map<number, number[]>();
  for (let column = rect.left; column < rect.right; column += 1) {
    for (let at = column * grid.height + rect.top; at < column * grid.height + rect.bottom; at += 1) {
      const tag = buffer.owner[at];
      if (tag === 0 || grid.weights[at] === 0 || !items.has(itemOfPart[tag - 1])) continue;
      const known = found.get(tag - 1);
      if (known) known.push(at);
      else found.set(tag - 1, [at]);
    }
  }
  return found;
}

/** Samples spread evenly over a part's pixels. */
export function samplesOf(seen: Look, pixels: readonly number[]): readonly Sample[] {
  const { height } = seen.grid;
  const count = Math.min(MOST_SAMPLES, pixels.length);
  return Array.from({ length: count }, (_, k) => {
    const at = pixels[Math.floor(((k + 0.5) * pixels.length) / count)];
    return { x: Math.floor(at / height), y: at % height, at: null };
  });
}

/** Samples of a part that shows between the pixels' samples: along its tubes, where a ray meets it first. */
export function thinSamples(seen: Look, part: StagePart): readonly Sample[] {
  const way = { seen, screen: seen.screen, mirror: null };
  const found: Sample[] = [];
  for (const tube of part.shape.tubes) {
    const [from, to] = [worldOf(part, tube.from), worldOf(part, tube.to)];
    for (let k = 0; k < ALONG && found.length < MOST_SAMPLES; k += 1) {
      const at = mix(from, to, (k + 0.5) / ALONG);
      const [x, y, depth] = onScreen(seen.screen, at);
      if (!(depth > 0.05)) continue;
      const [column, row] = [Math.floor(x / depth), Math.floor(y / depth)];
      const { left, top, right, bottom } = seen.rect;
      if (column < left || column >= right || row < top || row >= bottom) continue;
      if (isSeenAt(way, part, x / depth, y / depth, 0)) found.push({ x: column, y: row, at });
    }
  }
  return found;
}

/**
 * How far beyond an item's outline its surroundings are taken, as a share of the frame's height: off what the edge mixes,
 * and near enough to be seen beside it. By eye, no source.
 */
const BEYOND_SHARE = 0.012;
/** How far from a sample its item's outline is looked for, as a share of the frame's height: what is larger has others nearer to it. By eye, no source. */
const FARTHEST_SHARE = 0.3;
const WAYS = [
  [1, 0],
  [-1, 0],
  [0, -1],
  [0, 1],
] as const;

/** How many pixels beyond an item's outline its surroundings are taken. */
const beyondPixels = ({ height }: Grid): number => Math.max(2, Math.round(height * BEYOND_SHARE));

/** The pixels that some items can touch, and their surroundings, as one rectangle; null where they are in no frame. */
export function rectWithSurroundings(
  stage: SightStage,
  items: ReadonlySet<number>,
  camera: Camera,
  grid: Grid,
): PixelRect | null {
  const own = [...items].flatMap((item) => rectsOf(stage, item, camera, grid, []));
  if (own.length === 0) return null;
  const { left, top, right, bottom } = own.reduce(unionOf);
  const beyond = beyondPixels(grid) + 1;
  return {
    left: Math.max(0, left - beyond),
    top: Math.max(0, top - beyond),
    right: Math.min(grid.width, right + beyond),
    bottom: Math.min(grid.height, bottom + beyond),
  };
}

/** The pixels beside an item's outline, to the right, left, above and below of some samples; numbers in the buffer. */
export function pixelsAround(seen: Look, item: number, samples: readonly Sample[]): readonly number[] {
  const { buffer, rect, grid, itemOfPart } = seen;
  const beyond = beyondPixels(grid);
  const farthest = Math.round(grid.height * FARTHEST_SHARE);
  const isOwn = (x: number, y: number): boolean => {
    const tag = buffer.owner[x * grid.height + y];
    return tag > 0 && itemOfPart[tag - 1] === item;
  };
  const isIn = (x: number, y: number): boolean =>
    x >= rect.left &&
    x < rect.right &&
    y >= rect.top &&
    y < rect.bottom &&
    grid.weights[x * grid.height + y] > 0;
  const found = new Set<number>();
  for (const sample of samples) {
    for (const [dx, dy] of WAYS) {
      let steps = 1;
      const at = (count: number) => [sample.x + dx * count, sample.y + dy * count] as const;
      while (steps < farthest && isIn(...at(steps)) && isOwn(...at(steps))) steps += 1;
      const [x, y] = at(steps + beyond);
      if (steps < farthest && isIn(x, y) && !isOwn(x, y)) found.add(x * grid.height + y);
    }
  }
  return [...found];
}
