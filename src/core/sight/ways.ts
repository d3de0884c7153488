import { dot } from '../form/build/vector';
import type { Mirror, MirrorView } from './mirrors';
import { CLEARLY_NEARER, type Raster } from './raster';
import { meets, type Ray, showsAlong } from './rays';
import type { ScreenMatrix } from './screenFromWorld';
import type { StagePart } from './stage';

/** One way of seeing, directly or in a mirror: the matrix, the buffer to ask first, and how a ray through a pixel goes. */
export interface Way {
  /** With the buffer of this way. */
  readonly seen: Raster;
  readonly screen: ScreenMatrix;
  readonly mirror: MirrorView | null;
}

/** [x·depth, y·depth, depth] of a world point by a matrix of the screen. */
export const onScreen = (m: ScreenMatrix, p: readonly number[]): [number, number, number] => [
  m[0] * p[0] + m[1] * p[1] + m[2] * p[2] + m[3],
  m[4] * p[0] + m[5] * p[1] + m[6] * p[2] + m[7],
  m[8] * p[0] + m[9] * p[1] + m[10] * p[2] + m[11],
];

/** Whether the delivered frame looks at this place of the grid. */
export function inFrame({ seen, mirror }: Way, x: number, y: number): boolean {
  const { rect, grid } = seen;
  if (!(x >= rect.left && x <= rect.right && y >= rect.top && y <= rect.bottom)) return false;
  const column = Math.min(Math.floor(x), rect.right - 1);
  const row = Math.min(Math.floor(y), rect.bottom - 1);
  const at = column * grid.height + row;
  if (grid.weights[at] === 0) return false;
  return !mirror || mirror.face[at] === mirror.part.index + 1;
}

/** Pixels that are remembered, by their place: next to each other they have places of their own. */
const REMEMBERED = 64;

/** What the buffer of a way holds around places, asked along lines: each pixel's neighbours are looked up once or twice. */
export class Neighbours {
  private readonly asked = new Int32Array(REMEMBERED).fill(-1);
  private readonly least = new Float64Array(REMEMBERED);
  private readonly seams = new Uint8Array(REMEMBERED);

  constructor(private readonly way: Way) {}

  /**
   * What the buffer says of a spot: `open` when not every pixel around it shows something clearly nearer; `seam` when
   * they all do, but not all the same part, or a part of tubes, so that a gap finer than a pixel may lie between; else
   * `hidden`. Pixels around it that do not show the way's mirror say nothing, but that there may be a gap.
   * Where it is, pixels of the grid, and 1 over its depth.
   */
  standingOf(x: number, y: number, nearness: number): 'open' | 'seam' | 'hidden' {
    const column = Math.floor(x);
    const row = Math.floor(y);
    const place = (column * 7 + row) & (REMEMBERED - 1);
    const pixel = column * this.way.seen.grid.height + row;
    if (this.asked[place] !== pixel) this.ask(place, pixel, column, row);
    if (!(this.least[place] > nearness * CLEARLY_NEARER)) return 'open';
    return this.seams[place] === 0 ? 'hidden' : 'seam';
  }

  private ask(place: number, pixel: number, column: number, row: number): void {
    const { mirror, seen } = this.way;
    const { rect, grid, stage, buffer } = seen;
    const { nearness, owner } = buffer;
    const face = mirror ? mirror.face : null;
    const faceTag = mirror ? mirror.part.index + 1 : 0;
    let least = Infinity;
    let first = -1;
    let isSeam = false;
    for (let c = Math.max(rect.left, column - 1); c <= Math.min(rect.right - 1, column + 1); c += 1) {
      for (let r = Math.max(rect.top, row - 1); r <= Math.min(rect.bottom - 1, row + 1); r += 1) {
        const at = c * grid.height + r;
        if (face && face[at] !== faceTag) {
          isSeam = true;
          continue;
        }
        least = Math.min(least, nearness[at]);
        const tag = owner[at];
        if (first < 0) first = tag;
        if (tag !== first || (tag > 0 && stage.parts[tag - 1].shape.tubes.length > 0)) isSeam = true;
      }
    }
    this.asked[place] = pixel;
    this.least[place] = least;
    this.seams[place] = isSeam ? 1 : 0;
  }
}

/** The ray from the eye through a place in the picture, pixels of the grid; its direction is one long along the axis. */
export function rayThrough({ grid, camera }: Pick<Raster, 'grid' | 'camera'>, x: number, y: number): Ray {
  const { position, right, up, forward } = camera.pose;
  const across = (x - grid.axisX) / grid.perTangentX;
  const rise = -(y - grid.axisY) / grid.perTangentY;
  return {
    origin: position,
    direction: [
      forward[0] + (right[0] * across + up[0] * rise),
      forward[1] + (right[1] * across + up[1] * rise),
      forward[2] + (right[2] * across + up[2] * rise),
    ],
  };
}

/** What the buffer holds at a place and next to it: the likeliest things in a ray's way. */
function partsAround({ rect, grid, stage, buffer }: Raster, x: number, y: number): readonly StagePart[] {
  const around: StagePart[] = [];
  for (let row = Math.floor(y - 0.5); row <= Math.floor(y + 0.5); row += 1) {
    for (let column = Math.floor(x - 0.5); column <= Math.floor(x + 0.5); column += 1) {
      if (row < rect.top || row >= rect.bottom || column < rect.left || column >= rect.right) continue;
      const tag = buffer.owner[column * grid.height + row];
      if (tag > 0 && !around.includes(stage.parts[tag - 1])) around.push(stage.parts[tag - 1]);
    }
  }
  return around;
}

/** A ray as a mirror turns it, from a distance on. */
function turnedAt({ origin, direction }: Ray, distance: number, { normal }: Mirror): Ray {
  const twice = 2 * dot(direction, normal);
  return {
    origin: [
      origin[0] + direction[0] * distance,
      origin[1] + direction[1] * distance,
      origin[2] + direction[2] * distance,
    ],
    direction: [
      direction[0] - normal[0] * twice,
      direction[1] - normal[1] * twice,
      direction[2] - normal[2] * twice,
    ],
  };
}

/** The ray that a mirror sends on, from where the other meets the mirror's face; null where that passes by. */
export function sentOn(face: StagePart, mirror: Mirror, ray: Ray): Ray | null {
  const distance = meets(face, ray);
  return distance < Infinity ? turnedAt(ray, distance, mirror) : null;
}

/**
 * The exact answer for one place in the picture: is this part what the ray meets first? No place of it is nearer than
 * `leastDepth`, metres along the axis, so that what is in the way before that settles it.
 */
export function isSeenAt(way: Way, part: StagePart, x: number, y: number, leastDepth: number): boolean {
  const { seen, mirror } = way;
  const ray = rayThrough(seen, x, y);
  const likely = partsAround(seen, x, y);
  if (!mirror) return showsAlong(seen.stage, ray, part, null, likely, leastDepth);
  // The mirror's face is what this pixel shows: nothing stands before it.
  const toFace = meets(mirror.part, ray);
  if (!(toFace < Infinity)) return false;
  const onward = turnedAt(ray, toFace, mirror);
  return showsAlong(seen.stage, onward, part, mirror.part, likely, leastDepth - toFace);
}
