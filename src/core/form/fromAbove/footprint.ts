import type { Item } from '../../plan/items';
import type { Gear } from '../../plan/schema/gear';
import type { Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import { standingAt } from '../build/placement';
import { gearParts, recordsOf } from '../gear';
import { modelSize } from '../models/modelShapes';
import { pieceParts } from '../pieces';
import { hullOf, type Spot } from './hull';
import { outlinesOf } from './outlines';

/** The ground that an item takes, seen from above, metres: an outline, or a line where it runs along a path. */
export interface Footprint {
  readonly outline: readonly Spot[];
  readonly closed: boolean;
}

/** Parts that reach over the ground without standing on it, and would make what they belong to look larger. */
const OVERHEAD_PARTS = new Set(['roof', 'coping', 'arm']);

const kept = new WeakMap<object, { readonly records: readonly object[]; readonly footprint: Footprint }>();

/** Footprint of a piece or of gear; kept as long as the records that it comes from stay the same objects. */
export function footprintOf(item: Exclude<Item, { section: 'cast' }>, plan: Plan): Footprint {
  const records = item.section === 'gear' ? recordsOf(item.record, plan) : [item.record];
  const known = kept.get(item.record);
  if (known?.records.every((record, index) => record === records[index])) return known.footprint;
  const footprint =
    item.section === 'gear' ? gearFootprint(item.record, plan) : pieceFootprint(item.record, plan);
  kept.set(item.record, { records, footprint });
  return footprint;
}

function pieceFootprint(piece: Piece, plan: Plan): Footprint {
  if ('outline' in piece) return { outline: piece.outline, closed: true };
  if ('path' in piece) {
    return { outline: piece.closed ? [...piece.path, piece.path[0]] : piece.path, closed: false };
  }
  if ('from' in piece) return between(piece.from, piece.to);
  if (piece.kind === 'model') return { outline: modelOutline(piece), closed: true };
  return around(outlinesOf(pieceParts(piece, plan.ground)));
}

function gearFootprint(gear: Gear, plan: Plan): Footprint {
  if (gear.kind === 'cable') return { outline: gear.path, closed: false };
  if (gear.kind === 'bulb string') return between(gear.from, gear.to);
  return around(outlinesOf(gearParts(gear, plan)));
}

/** The corners of a model's box: cheap however many triangles it has, and the same while its file is not there. */
function modelOutline(model: Extract<Piece, { kind: 'model' }>): readonly Spot[] {
  const [width, , depth] = modelSize(model);
  const m = standingAt(model.at, model.headingDegrees);
  return [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ].map(([x, z]): Spot => {
    const [ownX, ownZ] = [(x * width) / 2, (z * depth) / 2];
    return [m[0] * ownX + m[2] * ownZ + m[3], m[8] * ownX + m[10] * ownZ + m[11]];
  });
}

const between = (from: readonly number[], to: readonly number[]): Footprint => ({
  outline: [
    [from[0], from[2]],
    [to[0], to[2]],
  ],
  closed: false,
});

function around(outlines: readonly { readonly name: string; readonly hull: readonly Spot[] }[]): Footprint {
  const standing = outlines.filter(({ name }) => !OVERHEAD_PARTS.has(name));
  const all = standing.length > 0 ? standing : outlines;
  return { outline: hullOf(all.flatMap(({ hull }) => hull)), closed: true };
}
