import type { Spot } from '../../plan/schema/numbers';
import type { Mesh } from '../../plan/schema/pieces';
import { ShapeBuilder } from '../build/shapeBuilder';
import { mix, type Vec3 } from '../build/vector';
import type { PartShape, PlacedPart } from '../types';
import { opennessOf } from './making/mesh';
import { apart, legsOf, spacedAlong, tidyPath } from './making/path';
import { fixed, type PieceOf } from './making/placed';

/** A long fence of closely set posts gets wider bays rather than more posts than this. */
const MOST_POSTS = 600;
/** Clear height under the lowest rail and under the mesh; common practice, no source. */
const CLEAR_BELOW_METRES = 0.1;
const MESH_BELOW_METRES = 0.03;

/**
 * A fence along its path: round `posts` at ends, corners and evenly between, round `rails` from near the foot to
 * the top, and `mesh`, one porous sheet that counts from both sides.
 */
export function fenceParts(fence: PieceOf<'fence'>): readonly PlacedPart[] {
  const { corners, closed } = tidyPath(fence.path, fence.closed);
  if (corners.length < 2) return [];
  const parts = [fixed('posts', postsShape(fence, corners, closed))];
  if (fence.rails > 0) parts.push(fixed('rails', railsShape(fence, corners, closed)));
  if (fence.mesh) parts.push(fixed('mesh', meshShape(fence, fence.mesh, corners, closed)));
  return parts;
}

function postsShape(fence: PieceOf<'fence'>, corners: readonly Spot[], closed: boolean): PartShape {
  const builder = new ShapeBuilder();
  const run = legsOf(corners, closed).reduce((sum, leg) => sum + apart(leg.from, leg.to), 0);
  const spacing = Math.max(fence.postEveryMetres, run / MOST_POSTS);
  const foot = fence.baseMetres;
  for (const [x, z] of spacedAlong(corners, closed, spacing)) {
    builder.tube([x, foot, z], [x, foot + fence.heightMetres, z], fence.postMetres / 2);
  }
  return builder.finish({ substance: 'galvanised', smooth: true });
}

function railsShape(fence: PieceOf<'fence'>, corners: readonly Spot[], closed: boolean): PartShape {
  const builder = new ShapeBuilder();
  const radius = Math.min(fence.postMetres * 0.35, fence.heightMetres / (4 * fence.rails));
  const highest = fence.heightMetres - radius;
  const lowest = Math.min(CLEAR_BELOW_METRES + radius, highest / 2);
  for (const { from, to } of legsOf(corners, closed)) {
    // Rails end inside the posts, short of their axes, so that two that meet there share no edge.
    const inset = Math.min(fence.postMetres / 4, apart(from, to) / 4) / apart(from, to);
    for (let k = 0; k < fence.rails; k += 1) {
      const share = fence.rails === 1 ? 1 : k / (fence.rails - 1);
      const height = fence.baseMetres + lowest + (highest - lowest) * share;
      const [start, end]: readonly Vec3[] = [
        [from[0], height, from[1]],
        [to[0], height, to[1]],
      ];
      builder.tube(mix(start, end, inset), mix(start, end, 1 - inset), radius);
    }
  }
  return builder.finish({ substance: 'galvanised', smooth: true });
}

function meshShape(
  fence: PieceOf<'fence'>,
  mesh: Mesh,
  corners: readonly Spot[],
  closed: boolean,
): PartShape {
  const builder = new ShapeBuilder();
  const low = fence.baseMetres + Math.min(MESH_BELOW_METRES, fence.heightMetres / 4);
  const high = fence.baseMetres + fence.heightMetres;
  const columns = corners.map(([x, z]) => [builder.corner([x, low, z]), builder.corner([x, high, z])]);
  columns.forEach(([bottom, top], k) => {
    const next = columns[k + 1] ?? (closed ? columns[0] : null);
    if (next) builder.triangle(bottom, next[0], next[1]).triangle(bottom, next[1], top);
  });
  return builder.finish({ substance: 'wire mesh', openness: opennessOf(mesh) });
}
