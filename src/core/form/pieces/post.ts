import { standingAt } from '../build/placement';
import { ShapeBuilder } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';
import { fixed, type PieceOf } from './making/placed';

/** A round post, named `post`, with a round `arm` across its heading just below the top. */
export function postParts(post: PieceOf<'post'>): readonly PlacedPart[] {
  const placement = standingAt(post.at, post.headingDegrees);
  const radius = post.diameterMetres / 2;
  const upright = new ShapeBuilder().tube([0, 0, 0], [0, post.heightMetres, 0], radius);
  const parts = [fixed('post', upright.finish({ substance: 'galvanised', smooth: true }, placement))];
  if (post.armMetres > 0) {
    const armRadius = radius * 0.7;
    const [half, height] = [post.armMetres / 2, Math.max(0, post.heightMetres - armRadius * 2)];
    const arm = new ShapeBuilder().tube([-half, height, 0], [half, height, 0], armRadius);
    parts.push(fixed('arm', arm.finish({ substance: 'galvanised', smooth: true }, placement)));
  }
  return parts;
}
