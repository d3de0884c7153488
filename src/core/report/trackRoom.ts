import type { Vec3 } from '../form/build/vector';
import { formOf } from '../form/formsAt';
import type { ItemForm, PlacedPart } from '../form/types';
import { DOLLY_WHEELBASE_METRES } from '../kit/supports';
import { spanOf, stateAt } from '../optics/camera';
import { trackOf } from '../optics/cameraKey';
import { DOLLY_SIZE } from '../plan/edits/setRides';
import { named } from '../plan/named';
import { headingWay } from '../plan/runs';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { keyAlong, type Track, trackPointAt } from '../plan/trackLine';

/**
 * Beside a dolly whoever operates walks along, on the side that the lens does not look to; whoever pushes walks behind
 * it, between the rails. Metres. Source: common practice, no source
 */
export const WALKWAY_METRES = 0.6;
/** What lies lower above the track's ground is stepped over, what hangs higher is walked under; metres. */
const STEPPED_OVER = 0.12;
const WALKED_UNDER = 1.9;
/** A floor that is lower by more than this is an edge, metres. */
const EDGE_METRES = 0.15;
/** A bent track is gone along in steps so long, and so is every edge beside a track; metres. */
const STEP_METRES = 0.25;
/** How far away a place with room is looked for, and in what steps; metres. */
export const TRACK_ROOM_SEARCH = 2;
const SHIFT_STEP = 0.05;
/** The lens looks to a side where its pan lies within 60 degrees of it, as a cosine. */
const LOOKS_THERE = 0.5;

const SIDES = [-1, 1] as const;
/** Left or right of a track's direction. */
type Side = (typeof SIDES)[number];

/** What is free beside a track's middle line, as far as was looked, and what ends it. */
interface Room {
  readonly metres: number;
  /** Null where nothing ends it within what is needed. */
  readonly by: string | null;
}

/** Too little room beside a track for the dolly that a setup has on it. */
export interface TightTrack {
  readonly track: Track;
  /** From the track's middle line, metres. */
  readonly neededMetres: number;
  /** How much of that is for walking; 0 where the dolly itself does not get through. */
  readonly walkwayMetres: number;
  readonly freeMetres: number;
  /** What is in the way: a set piece, or `the edge of` one. */
  readonly by: string;
  /** How far the track lies from a place with room, away from what is in the way; null for none within 2 m. */
  readonly away: { readonly metres: number; readonly by: Spot } | null;
}

/** A convex piece of what stands at walking height, seen from above. */
interface Obstacle {
  readonly label: string;
  readonly spots: readonly Spot[];
}

interface Box {
  readonly low: Vec3;
  readonly high: Vec3;
}

const boxes = new WeakMap<ItemForm, Box>();

const inWorld = ({ shape, worldFromPart: m }: PlacedPart, vertex: number): Vec3 => {
  const [x, y, z] = [0, 1, 2].map((axis) => shape.positions[3 * vertex + axis]);
  if (!m) return [x, y, z];
  return [
    m[0] * x + m[1] * y + m[2] * z + m[3],
    m[4] * x + m[5] * y + m[6] * z + m[7],
    m[8] * x + m[9] * y + m[10] * z + m[11],
  ];
};

function boxOf(form: ItemForm): Box {
  const known = boxes.get(form);
  if (known) return known;
  const low: [number, number, number] = [Infinity, Infinity, Infinity];
  const high: [number, number, number] = [-Infinity, -Infinity, -Infinity];
  for (const part of form.parts)
    for (let vertex = 0; vertex < part.shape.positions.length / 3; vertex += 1) {
      const at = inWorld(part, vertex);
      for (const axis of [0, 1, 2]) {
        low[axis] = Math.min(low[axis], at[axis]);
        high[axis] = Math.max(high[axis], at[axis]);
      }
    }
  const box = { low, high };
  boxes.set(form, box);
  return box;
}

/** What of a polygon lies where `inside` is not negative; `inside` is linear over it. */
function cut<Place extends readonly number[]>(
  polygon: readonly Place[],
  inside: (place: Place) => number,
  between: (a: Place, b: Place, share: number) => Place,
): readonly Place[] {
  return polygon.flatMap((place, k) => {
    const before = polygon[(k + polygon.length - 1) % polygon.length];
    const [was, is] = [inside(before), inside(place)];
    const crossing = was < 0 !== is < 0 ? [between(before, place, was / (was - is))] : [];
    return is < 0 ? crossing : [...crossing, place];
  });
}

const mix3 = (a: Vec3, b: Vec3, t: number): Vec3 => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
];
const mix2 = (a: Spot, b: Spot, t: number): Spot => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** What stands within a reach of the places of a way, at the height of whoever walks there. */
function obstaclesNear(plan: Plan, floor: number, way: readonly Spot[], reach: number): readonly Obstacle[] {
  const xs = way.map(([x]) => x);
  const zs = way.map(([, z]) => z);
  const low: Spot = [Math.min(...xs) - reach, Math.min(...zs) - reach];
  const high: Spot = [Math.max(...xs) + reach, Math.max(...zs) + reach];
  const isNear = (from: Vec3, to: Vec3): boolean =>
    to[0] >= low[0] &&
    from[0] <= high[0] &&
    to[2] >= low[1] &&
    from[2] <= high[1] &&
    to[1] >= floor + STEPPED_OVER &&
    from[1] <= floor + WALKED_UNDER;
  return plan.pieces.flatMap((piece): Obstacle[] => {
    const form = piece.kind === 'deck' ? null : formOf(plan, piece.id, 0);
    if (!form) return [];
    const box = boxOf(form);
    if (!isNear(box.low, box.high)) return [];
    return form.parts.flatMap((part) => {
      const { indices } = part.shape;
      return Array.from({ length: indices.length / 3 }, (_, k) => k).flatMap((k) => {
        const corners = [0, 1, 2].map((corner) => inWorld(part, indices[3 * k + corner]));
        const [from, to] = [Math.min, Math.max].map((pick): Vec3 => {
          const [x, y, z] = [0, 1, 2].map((axis) => pick(...corners.map((at) => at[axis])));
          return [x, y, z];
        });
        if (!isNear(from, to)) return [];
        const above = cut<Vec3>(corners, (at) => at[1] - floor - STEPPED_OVER, mix3);
        const spots = cut<Vec3>(above, (at) => floor + WALKED_UNDER - at[1], mix3);
        if (spots.length === 0) return [];
        return [{ label: piece.label, spots: spots.map(([x, , z]): Spot => [x, z]) }];
      });
    });
  });
}

/** What a dolly passes on its way, as short straight strips: from where, which way, how far, metres. */
interface Strip {
  readonly from: Spot;
  readonly way: Spot;
  readonly metres: number;
}

function stripsOf(track: Track, [low, high]: readonly [number, number]): readonly Strip[] {
  const isBent = track.bendMetres !== undefined;
  const count = isBent ? Math.max(1, Math.ceil((high - low) / STEP_METRES)) : 1;
  const metres = (high - low) / count;
  // Strips of a bend overlap, so that nothing on its outside is passed between two of them.
  const past = isBent ? metres / 2 : 0;
  return Array.from({ length: count }, (_, k) => {
    const { at, headingDegrees } = trackPointAt(track, low + (k + 0.5) * metres);
    const [east, south] = headingWay(headingDegrees);
    const back = metres / 2 + past;
    return {
      from: [at[0] - east * back, at[2] - south * back],
      way: [east, south],
      metres: metres + 2 * past,
    };
  });
}

/** The room on one side of all strips, as far as `enough`, metres. */
function roomBeside(
  plan: Plan,
  floor: number,
  strips: readonly Strip[],
  obstacles: readonly Obstacle[],
  side: Side,
  enough: number,
): Room {
  let room: Room = { metres: enough, by: null };
  const hasDeck = plan.pieces.some(({ kind }) => kind === 'deck');
  for (const { from, way, metres } of strips) {
    const [east, south] = way;
    const local = ([x, z]: Spot): Spot => [
      (x - from[0]) * east + (z - from[1]) * south,
      ((z - from[1]) * east - (x - from[0]) * south) * side,
    ];
    for (const { label, spots } of obstacles) {
      const before = cut<Spot>(spots.map(local), ([along]) => along, mix2);
      const within = cut<Spot>(before, ([along]) => metres - along, mix2).map(([, aside]) => aside);
      if (within.length === 0 || Math.max(...within) < 0) continue;
      const nearest = Math.max(0, Math.min(...within));
      if (nearest < room.metres) room = { metres: nearest, by: named(label) };
    }
    if (!hasDeck) continue;
    const steps = Math.max(1, Math.ceil(metres / STEP_METRES));
    for (let k = 0; k <= steps; k += 1) {
      const along = (metres * k) / steps;
      const edge = edgeBeside(plan, floor, room.metres, (aside) => [
        from[0] + east * along - south * side * aside,
        from[1] + south * along + east * side * aside,
      ]);
      if (edge) room = edge;
    }
  }
  return room;
}

/** Where the floor ends beside a place, nearer than `within`; null where it does not. */
function edgeBeside(plan: Plan, floor: number, within: number, spotAt: (aside: number) => Spot): Room | null {
  const under = (aside: number) => surfaceUnder(plan, spotAt(aside), { belowMetres: floor + STEPPED_OVER });
  const isFloor = (aside: number): boolean => {
    const { id, metres } = under(aside);
    return id !== null && floor - metres <= EDGE_METRES;
  };
  if (!isFloor(0)) return null;
  const steps = Math.ceil(within / STEP_METRES);
  const gone = Array.from({ length: steps }, (_, k) => (within * (k + 1)) / steps).find((at) => !isFloor(at));
  if (gone === undefined) return null;
  let [on, off] = [gone - within / steps, gone];
  for (let k = 0; k < 12; k += 1) {
    const middle = (on + off) / 2;
    if (isFloor(middle)) on = middle;
    else off = middle;
  }
  if (on >= within - 1e-3) return null;
  const { id } = under(on);
  const label = plan.pieces.find((piece) => piece.id === id)?.label;
  return { metres: on, by: `the edge of ${label === undefined ? 'the deck' : named(label)}` };
}

/** The sides of a track that a setup's lens does not look to; both where it looks to both, or along it. */
function walkSides(plan: Plan, setup: Setup, track: Track): readonly Side[] {
  const [from, to] = spanOf(plan, setup);
  const looks = new Set<Side>();
  for (const seconds of [from, (from + to) / 2, to]) {
    const [east, south] = headingWay(stateAt(plan, setup, seconds).headingDegrees);
    const [along, across] = headingWay(track.headingDegrees);
    const right = east * -across + south * along;
    for (const side of SIDES) if (right * side > LOOKS_THERE) looks.add(side);
  }
  return looks.size === 1 ? SIDES.filter((side) => !looks.has(side)) : SIDES;
}

/** Where a track is too near to something at a place, for a dolly so wide; null where there is room. */
function tightAt(
  plan: Plan,
  track: Track,
  stretch: readonly [number, number],
  obstacles: readonly Obstacle[],
  half: number,
  walks: readonly Side[],
): (Omit<TightTrack, 'away'> & { readonly side: Side }) | null {
  const floor = track.at[1];
  const strips = stripsOf(track, stretch);
  const rooms = SIDES.map((side) => ({
    side,
    ...roomBeside(plan, floor, strips, obstacles, side, half + WALKWAY_METRES),
  }));
  const [least] = rooms.toSorted((a, b) => a.metres - b.metres);
  const [most] = rooms.filter(({ side }) => walks.includes(side)).toSorted((a, b) => b.metres - a.metres);
  for (const [{ side, metres, by }, walkway] of [
    [least, 0],
    [most, WALKWAY_METRES],
  ] as const)
    if (by !== null && metres < half + walkway - 1e-3)
      return { track, neededMetres: half + walkway, walkwayMetres: walkway, freeMetres: metres, by, side };
  return null;
}

/**
 * What leaves too little room beside the track of a setup, over all of the stretch that its dolly uses: half the dolly
 * on either side, and on one side that the lens does not look to a walkway. Set pieces at walking height and the edges
 * of the deck count. Null where there is room, or no track.
 */
export function tightTrack(plan: Plan, setup: Setup): TightTrack | null {
  const track = trackOf(plan, setup);
  if (!track) return null;
  const dolly = plan.gear.find((gear) => gear.kind === 'dolly' && gear.rides === setup.id);
  const [width] = dolly?.kind === 'dolly' ? dolly.size : DOLLY_SIZE;
  const half = Math.max(width, track.gaugeMetres) / 2;
  const alongs = setup.move.keys.map((key) => keyAlong(track, key));
  const stretch = [
    Math.max(0, Math.min(...alongs) - DOLLY_WHEELBASE_METRES / 2),
    Math.min(track.lengthMetres, Math.max(...alongs) + DOLLY_WHEELBASE_METRES / 2),
  ] as const;
  const way = stripsOf(track, stretch).flatMap(({ from, way: [east, south], metres }): Spot[] => [
    from,
    [from[0] + east * metres, from[1] + south * metres],
  ]);
  const reach = half + WALKWAY_METRES + TRACK_ROOM_SEARCH;
  const obstacles = obstaclesNear(plan, track.at[1], way, reach);
  const walks = walkSides(plan, setup, track);
  const found = tightAt(plan, track, stretch, obstacles, half, walks);
  if (!found) return null;
  const { side, ...tight } = found;
  const [east, south] = headingWay(track.headingDegrees);
  const least = Math.ceil((tight.neededMetres - tight.freeMetres) / SHIFT_STEP - 1e-6);
  for (let step = Math.max(1, least); step * SHIFT_STEP <= TRACK_ROOM_SEARCH + 1e-9; step += 1) {
    const metres = Math.round(step * SHIFT_STEP * 100) / 100;
    const by: Spot = [south * side * metres, -east * side * metres];
    const there: Track = { ...track, at: [track.at[0] + by[0], track.at[1], track.at[2] + by[1]] };
    if (!tightAt(plan, there, stretch, obstacles, half, walks)) return { ...tight, away: { metres, by } };
  }
  return { ...tight, away: null };
}
