import type { Backdrop } from './backdrop';
import { makeRoomFor, TagSink, wipeOwners } from './buffer';
import { facingOf, partScreen } from './facing';
import { emptyFound } from './found';
import type { Scratch } from './look';
import {
  drawMirror,
  type FacedMirror,
  halfSpaceFor,
  heightOver,
  type MirrorView,
  reflected,
} from './mirrors';
import { CLEARLY_NEARER, rasterOf } from './raster';
import { drawShape } from './scan';
import { after, reflectionIn } from './screenFromWorld';
import { numbersOf, type StagePart } from './stage';
import type { Way } from './ways';

/** A way of seeing in a mirror. */
export type Reflection = Way & { readonly mirror: MirrorView };

/**
 * What solid mirrors show of some parts, where their faces are seen in a backdrop: drawn into the scratch's other buffer,
 * one way for each mirror whose face the eye is before.
 */
export function reflectionsIn(
  backdrop: Backdrop,
  { mirrorBuffer }: Scratch,
  mirrors: readonly FacedMirror[],
  parts: readonly StagePart[],
): readonly Reflection[] {
  const { stage, camera, grid, rect, screen, buffer } = backdrop;
  const eye = camera.pose.position;
  makeRoomFor(mirrorBuffer, stage);
  wipeOwners(mirrorBuffer, rect);
  const solids = parts.filter(({ shape }) => shape.openness === null);
  const seen = rasterOf(backdrop, mirrorBuffer);
  return mirrors.flatMap((mirror) => {
    if (mirror.part.shape.openness !== null || heightOver(mirror, eye) <= 0) return [];
    const { part, normal, point } = mirror;
    const view = {
      part,
      normal,
      point,
      face: buffer.owner,
      image: reflected(eye, mirror),
      screen: after(screen, reflectionIn(normal, point)),
    };
    drawMirror(solids, view, rect, grid, mirrorBuffer, numbersOf(stage).itemOfPart, emptyFound(stage));
    return [{ seen, screen: view.screen, mirror: view }];
  });
}

/** What a way's samples say of a part: some show it, or it may be so; all are clearly behind something; or it has none. */
export function standingInSamples(way: Way, part: StagePart): 'open' | 'behind' | 'nowhere' {
  const { seen, screen, mirror } = way;
  const { buffer, rect, camera } = seen;
  const mask = mirror && { owner: mirror.face, part: mirror.part.index };
  const sink = new TagSink(null, buffer.height, buffer.nearness, mask);
  sink.allowance = CLEARLY_NEARER;
  const facing = mirror
    ? facingOf(part, mirror.image, 'mirrored front')
    : facingOf(part, camera.pose.position, 'front');
  const keep = mirror && halfSpaceFor(part, mirror);
  drawShape(part.shape, partScreen(screen, part), rect, keep, facing, sink);
  if (sink.hasMet) return 'open';
  return sink.hasDrawn ? 'behind' : 'nowhere';
}
