import { moved } from '../../form/build/placement';
import { mix, type Vec3 } from '../../form/build/vector';
import type { ItemForm, PartShape, PlacedPart } from '../../form/types';

/** A place on a level, [x, z], metres. */
type Spot = readonly [number, number];

/** Shadows on a level: outlines to be filled by their winding, wherever it is not zero. */
export interface Shadows {
  /** How much of the sun is taken, 0..1: all of it by what is solid. */
  readonly share: number;
  readonly outlines: readonly (readonly Spot[])[];
}

/** Corners nearer than this are one corner, metres. */
const WELD_METRES = 1e-4;
/** What lies no higher than this over a level throws no shadow onto it, metres. */
const OVER_METRES = 0.002;
/** Lower than this the sun's shadows are longer than any roof: the sine of a tenth of a degree. */
const LEAST_SINE = 0.0017;
/** What lets the sun through as if it were not there. */
const CLEAR_SUBSTANCES: ReadonlySet<string> = new Set(['glass', 'glow']);

const known = new WeakMap<PartShape, Uint32Array>();

/**
 * Each corner's number among those of a shape that are told apart: flat faces have corners of their own each, and those in
 * the same place are one.
 */
function welded(shape: PartShape): Uint32Array {
  const kept = known.get(shape);
  if (kept) return kept;
  const { positions } = shape;
  const cell = (value: number): number => Math.round(value / WELD_METRES);
  const numbers = new Map<string, number>();
  const places = new Uint32Array(positions.length / 3);
  for (let k = 0; k < places.length; k += 1) {
    const key = `${cell(positions[k * 3])} ${cell(positions[k * 3 + 1])} ${cell(positions[k * 3 + 2])}`;
    const place = numbers.get(key) ?? numbers.size;
    numbers.set(key, place);
    places[k] = place;
  }
  known.set(shape, places);
  return places;
}

/** More corners than any part has: two of their numbers make one. */
const MOST_CORNERS = 0x4000000;

/** Directed sides of faces, of which two that run against each other are none: what stays is the edge of them all. */
class Edges {
  private readonly sides = new Map<number, number>();

  add(a: number, b: number): void {
    const key = a < b ? a * MOST_CORNERS + b : b * MOST_CORNERS + a;
    this.sides.set(key, (this.sides.get(key) ?? 0) + (a < b ? 1 : -1));
  }

  /** The edge as closed ways from corner to corner. */
  loops(): number[][] {
    const leaving = new Map<number, number[]>();
    // A closed solid has its edge twice, from the faces towards the sun and from those away from it.
    const isTwice = [...this.sides.values()].every((many) => many % 2 === 0);
    for (const [key, many] of this.sides) {
      const [low, high] = [Math.floor(key / MOST_CORNERS), key % MOST_CORNERS];
      const [start, end] = many > 0 ? [low, high] : [high, low];
      for (let k = 0; k < Math.abs(many); k += isTwice ? 2 : 1) {
        const ends = leaving.get(start);
        if (ends) ends.push(end);
        else leaving.set(start, [end]);
      }
    }
    const found: number[][] = [];
    // As many sides lead to a corner as lead away from it, so that a way only ends where it began.
    for (const [start, ends] of leaving)
      while (ends.length > 0) {
        const loop = [start];
        for (let at = ends.pop(); at !== undefined && at !== start; at = leaving.get(at)?.pop())
          loop.push(at);
        if (loop.length > 2) found.push(loop);
      }
    return found;
  }
}

/** Where the corners of a part come to lie on a level under the sun, those that sides of it have there included. */
class Thrown {
  /** By number: first the corners, then the cuts. */
  readonly spots: Spot[] = [];
  readonly heights: number[] = [];
  private readonly cuts = new Map<number, number>();
  private readonly corners: Vec3[] = [];

  constructor(
    { shape: { positions }, worldFromPart }: PlacedPart,
    places: Uint32Array,
    private readonly way: Vec3,
    private readonly levelMetres: number,
  ) {
    for (let k = 0; k < places.length; k += 1) {
      if (this.corners[places[k]]) continue;
      const own: Vec3 = [positions[k * 3], positions[k * 3 + 1], positions[k * 3 + 2]];
      const at = worldFromPart ? moved(worldFromPart, own) : own;
      this.corners[places[k]] = at;
      this.heights[places[k]] = at[1];
      this.spots[places[k]] = this.down(at);
    }
  }

  /** The number of the place where a side comes out of a level, the same from either end. */
  cut(m: number, n: number, metres: number): number {
    const [low, high] = m < n ? [m, n] : [n, m];
    const key = low * MOST_CORNERS + high;
    const kept = this.cuts.get(key);
    if (kept !== undefined) return kept;
    const [a, b] = [this.corners[low], this.corners[high]];
    const number = this.spots.length;
    this.cuts.set(key, number);
    this.spots.push(this.down(mix(a, b, (metres - a[1]) / (b[1] - a[1]))));
    return number;
  }

  private down([x, y, z]: Vec3): Spot {
    const along = (y - this.levelMetres) / this.way[1];
    return [x - this.way[0] * along, z - this.way[2] * along];
  }
}

/** Twice the area that an outline goes round, positive one way and negative the other. */
const turned = (outline: readonly Spot[]): number =>
  outline.reduce((sum, [x, z], k) => {
    const [nextX, nextZ] = outline[(k + 1) % outline.length];
    return sum + x * nextZ - nextX * z;
  }, 0);

/** Throws a part's shadow along the sun's way onto a level. */
function shadowOfPart(part: PlacedPart, way: Vec3, levelMetres: number): Spot[][] {
  const { indices } = part.shape;
  const places = welded(part.shape);
  const thrown = new Thrown(part, places, way, levelMetres);
  const { spots, heights } = thrown;
  const least = levelMetres + OVER_METRES;
  const edges = new Edges();
  for (let k = 0; k < indices.length; k += 3) {
    const face: number[] = [];
    for (let side = 0; side < 3; side += 1) {
      const m = places[indices[k + side]];
      const n = places[indices[k + ((side + 1) % 3)]];
      if (heights[m] > least) face.push(m);
      if (heights[m] > least !== heights[n] > least) face.push(thrown.cut(m, n, least));
    }
    const area = turned(face.map((number) => spots[number]));
    if (area === 0) continue;
    // All faces are turned one way, so that none takes away what another covers.
    const ordered = area > 0 ? face : face.toReversed();
    for (const [j, number] of ordered.entries()) edges.add(number, ordered[(j + 1) % ordered.length]);
  }
  return edges.loops().map((loop) => loop.map((number) => spots[number]));
}

/**
 * The shadows that forms throw onto a level under the sun: each part's triangles along the sun's way onto the plane, all
 * turned one way, as the edge of them together, cut where they come out of the level. Exact for a sun that is a point: its
 * half degree softens them by a hundredth of the way that they are thrown.
 * @param way unit vector towards the sun
 * @param levelMetres height of the level; what lies under it throws nothing
 */
export function sunShadows(forms: readonly ItemForm[], way: Vec3, levelMetres: number): readonly Shadows[] {
  if (way[1] < LEAST_SINE) return [];
  const byShare = new Map<number, Spot[][]>();
  for (const { parts } of forms)
    for (const part of parts) {
      const { openness, substance } = part.shape;
      const share = CLEAR_SUBSTANCES.has(substance) ? 0 : 1 - (openness ?? 0);
      if (share <= 0) continue;
      const outlines = shadowOfPart(part, way, levelMetres);
      if (outlines.length === 0) continue;
      const key = Math.round(share * 20) / 20;
      const alike = byShare.get(key) ?? [];
      byShare.set(key, alike);
      alike.push(...outlines);
    }
  return [...byShare].toSorted(([a], [b]) => a - b).map(([share, outlines]) => ({ share, outlines }));
}
