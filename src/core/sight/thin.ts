import type { Vec3 } from '../form/build/vector';
import type { Tube } from '../form/types';
import { hypot } from '../units/steadyMath';
import { hiderOf } from './backdrop';
import { NEAREST_METRES } from './clip';
import { cornersOf } from './corners';
import { touching } from './facing';
import { growBox, noteSpot } from './found';
import type { Look } from './look';
import { reflected } from './mirrors';
import { nearerThan, rasterOf } from './raster';
import { meetingOf } from './rects';
import type { ScreenMatrix } from './screenFromWorld';
import { type SightStage, type StagePart, worldOf } from './stage';
import { inFrame, isSeenAt, Neighbours, onScreen, type Way } from './ways';

/** Distance between two looks along an axis, pixels. */
const STEP_PIXELS = 0.5;
const MOST_STEPS = 4096;
/** Exact rays for one part at one instant: to begin with, at most, and where a gap finer than a pixel may be. */
const FIRST_RAYS = 32;
const MOST_RAYS = 192;
const SEAM_RAYS = 48;
/** Where across a tube to look, in radii: the axis first, then towards its sides. */
const ACROSS_WIDE = [0, 0.5, -0.5, 0.9, -0.9] as const;
const ACROSS_THIN = [0, 0.8, -0.8] as const;
/** Up to this half width, pixels, a tube counts as thin. */
const THIN_PIXELS = 0.75;
/** What a part that exact rays find counts at least, pixels: more than nothing. */
const LEAST_PIXELS = 1e-3;

/** A wet floor is no optical flat: an image in it counts from half a pixel on. */
const LEAST_IMAGE_PIXELS = 0.5;

/** A stretch of a tube's axis in the picture: pixels, and 1 over the depth, where it starts and as it goes on. */
interface Stretch {
  readonly x: number;
  readonly y: number;
  readonly nearness: number;
  readonly alongX: number;
  readonly alongY: number;
  readonly further: number;
  /** The shares of it that are in the picture. */
  readonly from: number;
  readonly to: number;
  readonly pixels: number;
  /** Across it, a pixel long; half the tube's width in pixels, by nearness. */
  readonly acrossX: number;
  readonly acrossY: number;
  readonly halfByNearness: number;
}

/** Where a tube's axis runs in the picture; null where none of it is there. */
function stretchOf(way: Way, part: StagePart, tube: Tube): Stretch | null {
  let a = onScreen(way.screen, worldOf(part, tube.from));
  let b = onScreen(way.screen, worldOf(part, tube.to));
  if (a[2] < NEAREST_METRES && b[2] < NEAREST_METRES) return null;
  const cut = (from: readonly number[], to: readonly number[]): [number, number, number] => {
    const share = (NEAREST_METRES - from[2]) / (to[2] - from[2]);
    return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share, NEAREST_METRES];
  };
  if (a[2] < NEAREST_METRES) a = cut(a, b);
  else if (b[2] < NEAREST_METRES) b = cut(b, a);
  const [ax, ay, bx, by] = [a[0] / a[2], a[1] / a[2], b[0] / b[2], b[1] / b[2]];
  const perMetre = Math.max(way.seen.grid.perTangentX, way.seen.grid.perTangentY);
  const reach = (tube.radius * perMetre) / Math.min(a[2], b[2]) + 1;
  const { rect } = way.seen;
  // The stretch of the axis inside the frame, inflated by half the tube's width.
  let from = 0;
  let to = 1;
  for (const [start, delta, low, high] of [
    [ax, bx - ax, rect.left - reach, rect.right + reach],
    [ay, by - ay, rect.top - reach, rect.bottom + reach],
  ]) {
    if (delta === 0) {
      if (start < low || start > high) return null;
      continue;
    }
    const s = (low - start) / delta;
    const t = (high - start) / delta;
    from = Math.max(from, Math.min(s, t));
    to = Math.min(to, Math.max(s, t));
  }
  if (from > to) return null;
  const run = hypot(bx - ax, by - ay);
  const acrossX = run > 0 ? -(by - ay) / run : 1;
  const acrossY = run > 0 ? (bx - ax) / run : 0;
  const { perTangentX, perTangentY } = way.seen.grid;
  return {
    x: ax,
    y: ay,
    nearness: 1 / a[2],
    alongX: bx - ax,
    alongY: by - ay,
    further: 1 / b[2] - 1 / a[2],
    from,
    to,
    pixels: run * (to - from),
    acrossX,
    acrossY,
    halfByNearness: tube.radius * hypot(acrossX * perTangentX, acrossY * perTangentY),
  };
}

interface Finding {
  pixels: number;
  readonly places: [number, number][];
}

/** Places in the picture that rays may be spent on, and what all of them stand for, pixels. */
class Candidates {
  /** x and y of each, pixels. */
  private places = new Float64Array(512);
  count = 0;
  area = 0;

  clear(): void {
    this.count = 0;
    this.area = 0;
  }

  add(x: number, y: number, area: number): void {
    if (2 * this.count === this.places.length) {
      const more = new Float64Array(2 * this.places.length);
      more.set(this.places);
      this.places = more;
    }
    this.places[2 * this.count] = x;
    this.places[2 * this.count + 1] = y;
    this.count += 1;
    this.area += area;
  }

  x(index: number): number {
    return this.places[2 * index];
  }

  y(index: number): number {
    return this.places[2 * index + 1];
  }
}

/** Of the part in hand: where a buffer leaves it open, and where gaps finer than a pixel may be. Used by one walk at a time. */
const open = new Candidates();
const seams = new Candidates();

/**
 * Spends rays on candidates, spread evenly; adds to the finding, and says whether any of them met the part, of which
 * nothing is nearer than `leastDepth`.
 */
function spend(
  way: Way,
  part: StagePart,
  leastDepth: number,
  candidates: Candidates,
  budget: number,
  found: Finding,
): boolean {
  const rays = Math.min(budget, candidates.count);
  let met = 0;
  for (let k = 0; k < rays; k += 1) {
    const index = Math.floor(((k + 0.5) * candidates.count) / rays);
    const x = candidates.x(index);
    const y = candidates.y(index);
    if (!isSeenAt(way, part, x, y, leastDepth)) continue;
    met += 1;
    found.places.push([x, y]);
  }
  if (met === 0) return false;
  found.pixels = Math.max(LEAST_PIXELS, (candidates.area * met) / rays);
  return true;
}

/** Whether a ray may meet a part: its box is in the picture, and not all behind one and the same part without tubes. */
export function mayBeMet({ seen, mirror }: Way, part: StagePart): boolean {
  const corners = cornersOf(part);
  const hider = hiderOf(seen, mirror ? corners.map((corner) => reflected(corner, mirror)) : corners);
  return hider === null || hider === 'several';
}

/** So many steps are walked at a time, where what they pass is not all behind one thing. */
const CHUNK_STEPS = 64;

/** How far along an axis one of so many steps is. */
const shareAt = ({ from, to }: Stretch, step: number, steps: number): number =>
  from + ((to - from) * step) / steps;

/**
 * Whether every pixel around a piece of a tube's axis, from one share of it to another, shows one and the same part
 * without tubes, clearly nearer: then all places on it are hidden, with all around them.
 */
function isBehindOne({ seen }: Way, stretch: Stretch, from: number, to: number): boolean {
  const nearest = Math.max(
    stretch.nearness + stretch.further * from,
    stretch.nearness + stretch.further * to,
  );
  const reach = 1 + nearest * stretch.halfByNearness;
  const x0 = stretch.x + stretch.alongX * from;
  const x1 = stretch.x + stretch.alongX * to;
  const y0 = stretch.y + stretch.alongY * from;
  const y1 = stretch.y + stretch.alongY * to;
  const around = {
    left: Math.floor(Math.min(x0, x1) - reach),
    top: Math.floor(Math.min(y0, y1) - reach),
    right: Math.floor(Math.max(x0, x1) + reach) + 1,
    bottom: Math.floor(Math.max(y0, y1) + reach) + 1,
  };
  const both = meetingOf(around, seen.rect);
  return both !== null && typeof nearerThan(seen, both, nearest) === 'number';
}

/** Walks some steps of a tube's axis, and looks to both sides: adds what is not hidden to the candidates. */
function walk(
  way: Way,
  stretch: Stretch,
  first: number,
  last: number,
  steps: number,
  neighbours: Neighbours,
): void {
  const { acrossX, acrossY } = stretch;
  for (let k = first; k <= last; k += 1) {
    const share = shareAt(stretch, k, steps);
    const nearness = stretch.nearness + stretch.further * share;
    const half = nearness * stretch.halfByNearness;
    const across = half > THIN_PIXELS ? ACROSS_WIDE : ACROSS_THIN;
    for (const offset of across) {
      const x = stretch.x + stretch.alongX * share + acrossX * half * offset;
      const y = stretch.y + stretch.alongY * share + acrossY * half * offset;
      if (!inFrame(way, x, y)) continue;
      const standing = neighbours.standingOf(x, y, nearness);
      if (standing === 'open') open.add(x, y, (2 * half * (stretch.pixels / steps)) / across.length);
      else if (standing === 'seam') seams.add(x, y, 0);
    }
  }
}

/** Walks a part's tubes; the pixels that it is worth, 0 when no ray meets it first. */
function walkTubes(way: Way, part: StagePart): Finding {
  open.clear();
  seams.clear();
  const neighbours = new Neighbours(way);
  let leastDepth = Infinity;
  for (const tube of part.shape.tubes) {
    const stretch = stretchOf(way, part, tube);
    if (!stretch) continue;
    const { nearness, further } = stretch;
    leastDepth = Math.min(leastDepth, 1 / Math.max(nearness, nearness + further) - tube.radius);
    const steps = Math.min(MOST_STEPS, Math.max(1, Math.ceil(stretch.pixels / STEP_PIXELS)));
    for (let first = 0; first <= steps; first += CHUNK_STEPS) {
      const last = Math.min(steps, first + CHUNK_STEPS - 1);
      if (!isBehindOne(way, stretch, shareAt(stretch, first, steps), shareAt(stretch, last, steps)))
        walk(way, stretch, first, last, steps, neighbours);
    }
  }
  const found: Finding = { pixels: 0, places: [] };
  // An image counts from half a pixel on: what is less needs no rays, and a seam never comes to so much.
  if (way.mirror && open.area < LEAST_IMAGE_PIXELS) return found;
  // A few rays spread over all candidates first; only when none of them meets the part, more, where there are more.
  if (spend(way, part, leastDepth, open, FIRST_RAYS, found)) return found;
  if (!way.mirror && spend(way, part, leastDepth, seams, SEAM_RAYS, found)) return found;
  if (open.count > FIRST_RAYS) spend(way, part, leastDepth, open, MOST_RAYS, found);
  return found;
}

/** Whether exact rays meet a part in gaps finer than a pixel of what it is behind at every sample. */
export const isSeenThrough = (way: Way, part: StagePart): boolean => {
  const { pixels } = walkTubes(way, part);
  return way.mirror ? pixels >= LEAST_IMAGE_PIXELS : pixels > 0;
};

/** Places on a triangle: its middle, and near each corner. */
const ON_TRIANGLE = [
  [1 / 3, 1 / 3, 1 / 3],
  [0.96, 0.02, 0.02],
  [0.02, 0.96, 0.02],
  [0.02, 0.02, 0.96],
] as const;

/** The corners of a part on screen as `onScreen` has them, three numbers each, used anew by every part. */
let cornersOnScreen = new Float64Array(3 * 256);

function bringOnScreen({ shape, worldFromPart }: StagePart, m: ScreenMatrix): void {
  const { positions } = shape;
  if (cornersOnScreen.length < positions.length) cornersOnScreen = new Float64Array(2 * positions.length);
  for (let k = 0; k < positions.length; k += 3) {
    const place: Vec3 = [positions[k], positions[k + 1], positions[k + 2]];
    const [x, y, depth] = onScreen(m, worldOf({ worldFromPart }, place));
    cornersOnScreen[k] = x;
    cornersOnScreen[k + 1] = y;
    cornersOnScreen[k + 2] = depth;
  }
}

/** Looks for slivers of a part without tubes that fell between the samples. */
function tryFaces(way: Way, part: StagePart): Finding {
  const { indices } = part.shape;
  const found: Finding = { pixels: 0, places: [] };
  const neighbours = new Neighbours(way);
  let rays = 0;
  bringOnScreen(part, way.screen);
  const c = cornersOnScreen;
  for (let k = 0; k < indices.length && rays < MOST_RAYS; k += 3) {
    const [i, j, l] = [3 * indices[k], 3 * indices[k + 1], 3 * indices[k + 2]];
    if (c[i + 2] < NEAREST_METRES || c[j + 2] < NEAREST_METRES || c[l + 2] < NEAREST_METRES) continue;
    for (const [first, second, third] of ON_TRIANGLE) {
      const depth = first * c[i + 2] + second * c[j + 2] + third * c[l + 2];
      const x = (first * c[i] + second * c[j] + third * c[l]) / depth;
      const y = (first * c[i + 1] + second * c[j + 1] + third * c[l + 1]) / depth;
      if (!inFrame(way, x, y) || neighbours.standingOf(x, y, 1 / depth) !== 'open') continue;
      rays += 1;
      if (!isSeenAt(way, part, x, y, 0)) continue;
      found.pixels += LEAST_PIXELS;
      found.places.push([x, y]);
    }
  }
  return found;
}

const partsOf = ({ parts, firstPart }: SightStage, items: ReadonlySet<number>): readonly StagePart[] =>
  Array.from(items, (item) => parts.slice(firstPart[item], firstPart[item + 1])).flat();

/**
 * Finds what the samples miss: parts that the item buffer gave no pixel, walked along their tube axes against the
 * buffer and, where that leaves it open, decided by exact rays. Adds what it finds to the look.
 * `items`: only these, all by default.
 */
export function findThin(seen: Look, items?: ReadonlySet<number>): void {
  const ways: Way[] = [
    { seen: rasterOf(seen, seen.buffer), screen: seen.screen, mirror: null },
    ...seen.mirrors.map((mirror) => ({
      seen: rasterOf(seen, seen.mirrorBuffer),
      screen: mirror.screen,
      mirror,
    })),
  ];
  for (const way of ways) {
    const found = way.mirror ? seen.mirrored : seen.direct;
    const mayTouch = touching(way.screen, seen.rect);
    for (const part of items ? partsOf(seen.stage, items) : seen.stage.parts) {
      if (found.partPixels[part.index] > 0 || part === way.mirror?.part) continue;
      // In a mirror only what has a wish is worth rays.
      if (way.mirror && seen.stage.forms[part.item].wish === 'either') continue;
      if (!mayTouch(part)) continue;
      if (!mayBeMet(way, part)) continue;
      let finding = walkTubes(way, part);
      const isMissed =
        way.mirror === null && found.itemPixels[part.item] === 0 && seen.alone[part.item] === 0;
      if (finding.pixels === 0 && isMissed) finding = tryFaces(way, part);
      if (finding.pixels === 0 || (way.mirror && finding.pixels < LEAST_IMAGE_PIXELS)) continue;
      found.partPixels[part.index] += finding.pixels;
      found.itemPixels[part.item] += finding.pixels;
      for (const [x, y] of finding.places) growBox(found.boxes, part.item, x, y, y);
      const [x, y] = finding.places[finding.places.length >> 1];
      noteSpot(found.spots, part.item, part.index, LEAST_PIXELS, x, y);
    }
  }
}
