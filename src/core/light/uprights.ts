import type { UprightLimits } from '../plan/schema/plan';
import type { Look } from '../sight/look';
import { type StagePart, worldOf } from '../sight/stage';
import { onScreen } from '../sight/ways';
import { pow, tan } from '../units/steadyMath';
import { rayOfPixel } from './frameSamples';
import type { LightScene } from './lightScene';
import { partLuminance } from './partLuminance';

/** A round member that stands upright in frame: a post, a mast, a column. */
export interface Upright {
  readonly item: number;
  readonly part: number;
  /** Its width in frame, pixels of the grid. */
  readonly pixels: number;
  /** cd/m². */
  readonly luminance: number;
}

/**
 * What passes for an upright where a plan says nothing else. All five are our own estimates of what the eye lets pass
 * for a lamp post or a mast among others. Source: common practice, no source
 */
export const UPRIGHTS: UprightLimits = {
  // A post out of plumb, and one that a wide lens leans.
  leanDegrees: 8.5,
  // A stub of this share of the frame's height is no line in the picture.
  leastHeight: 0.06,
  // A post may stand twice as far away as another, and look half as wide.
  likeWidth: 2,
  likeStops: 1,
  // One other is a pair, two make a row.
  among: 2,
};

/** Where along a member it is looked for. */
const PLACES = [0.5, 0.3, 0.7] as const;

function uprightsOfPart(seen: Look, scene: LightScene, part: StagePart, limits: UprightLimits): Upright[] {
  const mostLean = tan((limits.leanDegrees * Math.PI) / 180);
  const { grid, rect, screen, buffer } = seen;
  return part.shape.tubes.flatMap((tube): Upright[] => {
    const ends = [tube.from, tube.to].map((end) => onScreen(screen, worldOf(part, end)));
    if (ends.some(([, , depth]) => depth < 0.1)) return [];
    const [[ax, ay], [bx, by]] = ends.map(([x, y, depth]) => [x / depth, y / depth]);
    const tall = Math.abs(by - ay);
    if (tall === 0 || Math.abs(bx - ax) > mostLean * tall) return [];
    const [top, bottom] = [Math.max(rect.top, Math.min(ay, by)), Math.min(rect.bottom, Math.max(ay, by))];
    if (bottom - top < limits.leastHeight * grid.height) return [];
    for (const place of PLACES) {
      const row = top + (bottom - top) * place;
      const share = (row - ay) / (by - ay);
      const [column, y] = [Math.floor(ax + (bx - ax) * share), Math.floor(row)];
      if (column < rect.left || column >= rect.right) continue;
      if (buffer.owner[column * grid.height + y] !== part.index + 1) continue;
      const found = partLuminance(scene, part, rayOfPixel(seen, column, y));
      if (!found) continue;
      const nearness = 1 / ends[0][2] + (1 / ends[1][2] - 1 / ends[0][2]) * share;
      return [
        {
          item: part.item,
          part: part.index,
          pixels: 2 * tube.radius * grid.perTangentX * nearness,
          luminance: found.total,
        },
      ];
    }
    return [];
  });
}

/** The upright members that set pieces show in frame. */
export const uprightsOf = (seen: Look, scene: LightScene, limits: UprightLimits): readonly Upright[] =>
  seen.stage.parts
    .filter(
      (part) => seen.stage.forms[part.item].section === 'piece' && seen.direct.partPixels[part.index] > 0,
    )
    .flatMap((part) => uprightsOfPart(seen, scene, part, limits));

/** The widest upright member that a part shows; null for none. */
export const uprightOf = (
  seen: Look,
  scene: LightScene,
  part: StagePart,
  limits: UprightLimits,
): Upright | null => uprightsOfPart(seen, scene, part, limits).sort((a, b) => b.pixels - a.pixels)[0] ?? null;

/** How many of the background's uprights a member is like, by width and by luminance. */
export function likeOf(own: Upright, others: readonly Upright[], limits: UprightLimits): number {
  const mostRatio = pow(2, limits.likeStops);
  return others.filter(({ item, pixels, luminance }) => {
    if (item === own.item) return false;
    const width = Math.max(pixels / own.pixels, own.pixels / pixels);
    const bright = Math.max(luminance / own.luminance, own.luminance / luminance);
    return width <= limits.likeWidth && bright <= mostRatio;
  }).length;
}
