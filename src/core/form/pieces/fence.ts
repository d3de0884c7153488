import type { Spot } from '../../plan/schema/numbers';
import type { Mesh } from '../../plan/schema/pieces';
import { ShapeBuilder } from '../build/shapeBuilder';
import { mix, type Vec3 } from '../build/vector';
import type { PartShape, PlacedPart } from '../types';
import { opennessOf } from './making/mesh';
import { type Column, columnsOf, placedOpenings } from './making/openings';
import { apart, legsOf, spacedAlong, tidyPath } from './making/path';
import { fixed, type PieceOf } from './making/placed';

/** A long fence of closely set posts gets wider bays rather than more posts than this. */
const MOST_POSTS = 600;
/** Clear height under the lowest rail and under the mesh; common practice, no source. */
const CLEAR_BELOW_METRES = 0.1;
const MESH_BELOW_METRES = 0.03;
/** A rail this little above a gate's head is the one that the gate would hit, metres. */
const RAIL_ABOVE_METRES = 0.02;

/**
 * A fence along its path: round `posts` at ends, corners and evenly between, round `rails` from near the foot to
 * the top, and `mesh`, one porous sheet that counts from both sides. A gate stands between two posts of its own; mesh
 * and rails are left out of it.
 */
export function fenceParts(fence: PieceOf<'fence'>): readonly PlacedPart[] {
  if (tidyPath(fence.path, fence.closed).corners.length < 2) return [];
  const gates = placedOpenings(fence, 0);
  const { columns } = columnsOf(fence, gates);
  const parts = [fixed('posts', postsShape(fence))];
  if (fence.rails > 0) parts.push(fixed('rails', railsShape(fence, columns)));
  if (fence.mesh) parts.push(fixed('mesh', meshShape(fence, fence.mesh, columns)));
  return parts.filter((part) => part.shape.indices.length > 0);
}

/** Where a fence's posts stand: at ends and corners, evenly between, and on either side of each gate, none in it. */
export function fencePosts(fence: PieceOf<'fence'>): readonly Spot[] {
  const { corners, closed } = tidyPath(fence.path, fence.closed);
  const gates = placedOpenings(fence, 0);
  const run = legsOf(corners, closed).reduce((sum, leg) => sum + apart(leg.from, leg.to), 0);
  const spacing = Math.max(fence.postEveryMetres, run / MOST_POSTS);
  const even = spacedAlong(corners, closed, spacing);
  if (gates.length === 0) return even;
  const clear = fence.postMetres;
  // A corner is held by its post whatever opens beside it; any other post gives way to those of a gate.
  const kept = even.filter(
    (spot) => corners.includes(spot) || !gates.some(({ from, to }) => offSegment(spot, from, to) < clear),
  );
  const posts: Spot[] = [...kept];
  for (const side of gates.flatMap(({ from, to }) => [from, to])) {
    const isInGate = gates.some(
      ({ from, to }) =>
        offSegment(side, from, to) < 1e-6 && apart(side, from) > 1e-6 && apart(side, to) > 1e-6,
    );
    if (!isInGate && !posts.some((post) => apart(post, side) < clear)) posts.push(side);
  }
  return posts;
}

/** How far a place lies from the straight piece between two others, metres. */
function offSegment(spot: Spot, from: Spot, to: Spot): number {
  const [x, z] = [to[0] - from[0], to[1] - from[1]];
  const share = ((spot[0] - from[0]) * x + (spot[1] - from[1]) * z) / (x * x + z * z);
  const within = Math.min(Math.max(share, 0), 1);
  return apart(spot, [from[0] + x * within, from[1] + z * within]);
}

function postsShape(fence: PieceOf<'fence'>): PartShape {
  const builder = new ShapeBuilder();
  const foot = fence.baseMetres;
  for (const [x, z] of fencePosts(fence)) {
    builder.tube([x, foot, z], [x, foot + fence.heightMetres, z], fence.postMetres / 2);
  }
  return builder.finish({ substance: 'galvanised', smooth: true });
}

function railsShape(fence: PieceOf<'fence'>, columns: readonly Column[]): PartShape {
  const builder = new ShapeBuilder();
  const radius = Math.min(fence.postMetres * 0.35, fence.heightMetres / (4 * fence.rails));
  const highest = fence.heightMetres - radius;
  const lowest = Math.min(CLEAR_BELOW_METRES + radius, highest / 2);
  const legs = columns.reduce((count, { leg }) => Math.max(count, leg + 1), 0);
  for (let leg = 0; leg < legs; leg += 1) {
    const here = columns.filter((column) => column.leg === leg);
    for (let k = 0; k < fence.rails; k += 1) {
      const share = fence.rails === 1 ? 1 : k / (fence.rails - 1);
      const above = lowest + (highest - lowest) * share;
      for (const { from, to } of stretchesAt(here, above)) {
        // Rails end inside the posts, short of their axes, so that two that meet there share no edge.
        const inset = Math.min(fence.postMetres / 4, apart(from, to) / 4) / apart(from, to);
        const height = fence.baseMetres + above;
        const [start, end]: readonly Vec3[] = [
          [from[0], height, from[1]],
          [to[0], height, to[1]],
        ];
        builder.tube(mix(start, end, inset), mix(start, end, 1 - inset), radius);
      }
    }
  }
  return builder.finish({ substance: 'galvanised', smooth: true });
}

/** The pieces of one leg, of whose columns these are, on which nothing is open at a height above its foot. */
function stretchesAt(columns: readonly Column[], above: number): readonly { from: Spot; to: Spot }[] {
  const stretches: { from: Spot; to: Spot }[] = [];
  let isOpen = true;
  for (const { from, to, voids } of columns) {
    const wasOpen = isOpen;
    isOpen = voids.some(([low, high]) => low < above && above < high + RAIL_ABOVE_METRES);
    if (isOpen) continue;
    if (wasOpen) stretches.push({ from: from.at, to: to.at });
    else stretches[stretches.length - 1].to = to.at;
  }
  return stretches;
}

function meshShape(fence: PieceOf<'fence'>, mesh: Mesh, columns: readonly Column[]): PartShape {
  const builder = new ShapeBuilder();
  const low = Math.min(MESH_BELOW_METRES, fence.heightMetres / 4);
  const corners = new Map<string, number>();
  const corner = ([x, z]: Spot, height: number): number => {
    const key = `${x} ${height} ${z}`;
    const made = corners.get(key) ?? builder.corner([x, fence.baseMetres + height, z]);
    corners.set(key, made);
    return made;
  };
  for (const { from, to, voids } of columns) {
    for (const [bottom, top] of spansBeside(voids, low, fence.heightMetres)) {
      const [a, b] = [corner(from.at, bottom), corner(to.at, bottom)];
      const [c, d] = [corner(to.at, top), corner(from.at, top)];
      builder.triangle(a, b, c).triangle(a, c, d);
    }
  }
  return builder.finish({ substance: 'wire mesh', openness: opennessOf(mesh) });
}

/** What is left between two heights beside all that is open. */
function spansBeside(
  voids: readonly (readonly [low: number, high: number])[],
  low: number,
  high: number,
): readonly (readonly [number, number])[] {
  const spans: (readonly [number, number])[] = [];
  let from = low;
  for (const [start, end] of [...voids].sort((a, b) => a[0] - b[0])) {
    if (start > from) spans.push([from, Math.min(start, high)]);
    from = Math.max(from, end);
  }
  if (from < high) spans.push([from, high]);
  return spans.filter(([start, end]) => end > start);
}
