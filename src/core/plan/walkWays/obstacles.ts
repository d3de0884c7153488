import { cos, sin } from '../../units/steadyMath';
import { outOfOwnFrame } from '../areas';
import { legsOf, metresBetween } from '../runs';
import type { Point, Spot } from '../schema/numbers';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { edgesOf } from './edges';
import { boundsOf } from './planar';
import type { Floor, Obstacle } from './types';

/** What is no higher than this above the floor is stepped over, metres. Source: common practice, no source */
export const STEP_METRES = 0.2;
/** What begins higher than this above the floor is walked under, metres. Source: common practice, no source */
export const HEADROOM_METRES = 1.8;

/** Corners of the circle around what is round. */
const ROUND_CORNERS = 16;
/** Walls of a stair house and a closed fence's mesh are at least so thick on the floor, metres. */
const THINNEST_METRES = 0.02;
const HOUSE_WALL_METRES = 0.2;
/** Around the foot of a chart nobody walks, metres. Source: common practice, no source */
const CHART_FOOT_METRES = 0.25;

type Sized = Extract<Piece, { readonly size: unknown }>;
type Run = Extract<Piece, { readonly kind: 'wall' | 'parapet' | 'fence' }>;

/** A rectangle in a thing's own frame, to its right and to its back, as it lies on the roof. */
export function lying(
  { at, headingDegrees }: { readonly at: Point; readonly headingDegrees: number },
  [left, right]: readonly [number, number],
  [front, back]: readonly [number, number],
): readonly Spot[] {
  const place = (x: number, z: number): Spot => outOfOwnFrame(at, headingDegrees, [x, z]);
  return [place(left, front), place(right, front), place(right, back), place(left, back)];
}

/** The circle around a place, from outside, as corners. */
export function round(at: Spot, radius: number): readonly Spot[] {
  const reach = radius / cos(Math.PI / ROUND_CORNERS);
  return Array.from({ length: ROUND_CORNERS }, (_, k): Spot => {
    const angle = (2 * Math.PI * k) / ROUND_CORNERS;
    return [at[0] + reach * cos(angle), at[1] + reach * sin(angle)];
  });
}

interface Solid {
  readonly outline: readonly Spot[];
  readonly bottom: number;
  readonly top: number;
}

/** The stretches of a run that have no opening that one walks through on this floor. */
function runSolids(run: Run, [lowest, highest]: Floor): readonly Solid[] {
  const half = Math.max(THINNEST_METRES, run.kind === 'fence' ? run.postMetres : run.thicknessMetres) / 2;
  const [bottom, top] = [run.baseMetres, run.baseMetres + run.heightMetres];
  const ways = (run.openings ?? []).filter(
    ({ sillMetres, heightMetres }) =>
      bottom + sillMetres <= highest + STEP_METRES &&
      Math.min(top, bottom + sillMetres + heightMetres) >= Math.min(top, lowest + HEADROOM_METRES),
  );
  let before = 0;
  return legsOf(run.path, run.closed).flatMap(([from, to]): Solid[] => {
    const length = metresBetween(from, to);
    const start = before;
    before += length;
    if (length === 0) return [];
    const way: Spot = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const open = ways
      .map(
        ({ alongMetres, widthMetres }): Spot => [
          Math.max(0, alongMetres - widthMetres / 2 - start),
          Math.min(length, alongMetres + widthMetres / 2 - start),
        ],
      )
      .filter(([near, far]) => far > near)
      .sort((a, b) => a[0] - b[0]);
    const solids: Solid[] = [];
    let near = 0;
    for (const [opens, closes] of [...open, [length, length] as Spot]) {
      if (opens > near) {
        const place = (along: number, aside: number): Spot => [
          from[0] + way[0] * along - way[1] * aside,
          from[1] + way[1] * along + way[0] * aside,
        ];
        const outline = [place(near, -half), place(opens, -half), place(opens, half), place(near, half)];
        solids.push({ outline, bottom, top });
      }
      near = Math.max(near, closes);
    }
    return solids;
  });
}

/** A stair house is hollow, and its door is open to whoever walks. */
function houseSolids(house: Extract<Piece, { readonly kind: 'stair house' }>): readonly Solid[] {
  const [width, height, depth] = house.size;
  const wall = Math.min(HOUSE_WALL_METRES, Math.min(width, depth) * 0.2);
  const [x, z] = [width / 2, depth / 2];
  // To the right as one faces the front is to the house's own left.
  const middle = -house.door.alongMetres;
  const [near, far] = [middle - house.door.widthMetres / 2, middle + house.door.widthMetres / 2];
  const walls = [
    lying(house, [-x, x], [z - wall, z]),
    lying(house, [-x, -x + wall], [-z, z]),
    lying(house, [x - wall, x], [-z, z]),
    ...(near > -x ? [lying(house, [-x, near], [-z, -z + wall])] : []),
    ...(far < x ? [lying(house, [far, x], [-z, -z + wall])] : []),
  ];
  const [, bottom] = house.at;
  return walls.map((outline) => ({ outline, bottom, top: bottom + height }));
}

/** A tank on high legs is walked under, between them. */
function tankSolids(tank: Extract<Piece, { readonly kind: 'tank' }>): readonly Solid[] {
  const [x, bottom, z] = tank.at;
  const radius = tank.diameterMetres / 2;
  const under = bottom + tank.legMetres;
  const leg = Math.min(0.06, radius / 6);
  const out = radius * 0.74;
  const legs = [
    [-out, -out],
    [out, -out],
    [out, out],
    [-out, out],
  ].map(([right, back]) => ({
    outline: lying(tank, [right - leg, right + leg], [back - leg, back + leg]),
    bottom,
    top: under,
  }));
  return [...legs, { outline: round([x, z], radius), bottom: under, top: under + tank.drumMetres }];
}

/** A model counts as the box of its size, middle of the foot at its place. */
function modelSolid(model: Extract<Piece, { readonly kind: 'model' }>): Solid {
  const { lowest, highest } = model.extent;
  const spans = lowest.map((low, axis) => (highest[axis] - low) * model.metresPerUnit);
  const [wide, high, deep] = model.up === 'y' ? spans : [spans[0], spans[2], spans[1]];
  return {
    outline: lying(model, [-wide / 2, wide / 2], [-deep / 2, deep / 2]),
    bottom: model.at[1],
    top: model.at[1] + high,
  };
}

const sizedSolid = (piece: Exclude<Sized, { readonly kind: 'stair house' }>): Solid => {
  const [width, height, depth] = piece.size;
  return {
    outline: lying(piece, [-width / 2, width / 2], [-depth / 2, depth / 2]),
    bottom: piece.at[1],
    top: piece.at[1] + height,
  };
};

/** What a set piece has on the floor, and how high; nothing for a deck, a washing line and a scan of the whole place. */
function solidsOf(piece: Piece, floor: Floor): readonly Solid[] {
  switch (piece.kind) {
    case 'wall':
    case 'parapet':
    case 'fence':
      return runSolids(piece, floor);
    case 'stair house':
      return houseSolids(piece);
    case 'tank':
      return tankSolids(piece);
    case 'post': {
      const [x, bottom, z] = piece.at;
      return [{ outline: round([x, z], piece.diameterMetres / 2), bottom, top: bottom + piece.heightMetres }];
    }
    case 'pane': {
      const half = piece.widthMetres / 2;
      const outline = lying(piece, [-half, half], [-THINNEST_METRES / 2, THINNEST_METRES / 2]);
      return [{ outline, bottom: piece.at[1], top: piece.at[1] + piece.heightMetres }];
    }
    case 'chart': {
      const half = piece.widthMetres / 2;
      const tilt = (piece.tiltDegrees * Math.PI) / 180;
      const deep = Math.max(THINNEST_METRES, piece.heightMetres * Math.abs(sin(tilt))) / 2;
      const high = (piece.heightMetres / 2) * cos(tilt);
      const middle = piece.at[1] + piece.middleMetres;
      return [
        { outline: lying(piece, [-half, half], [-deep, deep]), bottom: middle - high, top: middle + high },
        { outline: round([piece.at[0], piece.at[2]], CHART_FOOT_METRES), bottom: piece.at[1], top: middle },
      ];
    }
    case 'model':
      return [modelSolid(piece)];
    case 'deck':
    case 'line':
      return [];
    default:
      return [sizedSolid(piece)];
  }
}

const keptOfPiece = new WeakMap<Piece, readonly Obstacle[]>();

/** What a set piece has on a floor, whatever its height over it; the same for the same set piece, unless it has openings. */
function ofPiece(piece: Piece, floor: Floor): readonly Obstacle[] {
  const hasOpenings = 'openings' in piece && (piece.openings?.length ?? 0) > 0;
  const known = hasOpenings ? undefined : keptOfPiece.get(piece);
  if (known) return known;
  const found = solidsOf(piece, floor).map(
    ({ outline, bottom, top }): Obstacle => ({
      pieceId: piece.id,
      kind: 'solid',
      outline,
      bounds: boundsOf(outline),
      bottomMetres: bottom,
      topMetres: top,
    }),
  );
  if (!hasOpenings) keptOfPiece.set(piece, found);
  return found;
}

const kept = new WeakMap<Plan['pieces'], Map<string, readonly Obstacle[]>>();

/**
 * All that a walk on a floor does not go through, over or off: solids that are higher than a step and lower than a head,
 * and the edges of decks and holes. The same list for the same set pieces and floor.
 */
export function obstaclesOn(plan: Plan, floor: Floor): readonly Obstacle[] {
  const byFloor = kept.get(plan.pieces) ?? new Map<string, readonly Obstacle[]>();
  kept.set(plan.pieces, byFloor);
  const key = floor.join(' ');
  const known = byFloor.get(key);
  if (known) return known;
  const [lowest, highest] = floor;
  const solids = plan.pieces.flatMap((piece) =>
    ofPiece(piece, floor).filter(
      ({ bottomMetres, topMetres }) =>
        topMetres > lowest + STEP_METRES && bottomMetres < highest + HEADROOM_METRES,
    ),
  );
  const found = [...solids, ...edgesOf(plan, floor)];
  byFloor.set(key, found);
  return found;
}
