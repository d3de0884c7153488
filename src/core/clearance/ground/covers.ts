import { scale, subtract, type Vec3 } from '../../form/build/vector';
import { type SightStage, type StagePart, worldOf } from '../../sight/stage';
import { asin, atan2, hypot } from '../../units/steadyMath';
import { solidPieces } from './solidPieces';

/** A convex solid that stands still, in the world. */
export interface Cover {
  /** Its planes, a·x + b·y + c·z ≤ d inside, four numbers each. */
  readonly planes: Float64Array;
  /** A ball around it. */
  readonly centre: Vec3;
  readonly radius: number;
}

/** What is smaller than this across hides no stand, metres. */
const LEAST_METRES = 0.3;
/** Shapes of more triangles than a thousand are no boxes, walls or drums. */
const MOST_INDICES = 3000;
/** Nearer to a solid than this, metres, an eye counts as inside it. */
const INSIDE_METRES = 0.02;

/** The convex solids among the parts of a stage that nothing is seen through, of the items that are taken. */
export function coversOf(stage: SightStage, takes: (item: number) => boolean): readonly Cover[] {
  return stage.parts.flatMap((part) => {
    if (part.shape.openness !== null || part.shape.mirror || part.radius < LEAST_METRES / 2) return [];
    if (!takes(part.item) || part.shape.indices.length > MOST_INDICES) return [];
    return solidPieces(part.shape).flatMap(({ corners, planes }) => {
      if (!planes || !isLarge(corners)) return [];
      const world = corners.map((corner) => worldOf(part, corner));
      return [
        {
          planes: Float64Array.from(planes.flatMap(([normal, reach]) => inWorld(part, normal, reach))),
          ...ballAround(world),
        },
      ];
    });
  });
}

/** Whether it spans enough along two of its axes. */
function isLarge(corners: readonly Vec3[]): boolean {
  const spans = [0, 1, 2].map((axis) => {
    let [low, high] = [Infinity, -Infinity];
    for (const corner of corners) {
      low = Math.min(low, corner[axis]);
      high = Math.max(high, corner[axis]);
    }
    return high - low;
  });
  spans.sort((a, b) => a - b);
  return spans[1] >= LEAST_METRES;
}

function ballAround(corners: readonly Vec3[]): Pick<Cover, 'centre' | 'radius'> {
  const [x, y, z] = [0, 1, 2].map(
    (axis) => corners.reduce((sum, corner) => sum + corner[axis], 0) / corners.length,
  );
  const radius = corners.reduce((most, at) => Math.max(most, hypot(at[0] - x, at[1] - y, at[2] - z)), 0);
  return { centre: [x, y, z], radius };
}

/** A plane of a part in the world; the motion is rigid, so a step along its normal stays one. */
function inWorld(part: StagePart, normal: Vec3, reach: number): number[] {
  const on = worldOf(part, scale(normal, reach));
  const way = subtract(worldOf(part, scale(normal, reach + 1)), on);
  return [...way, way[0] * on[0] + way[1] * on[1] + way[2] * on[2]];
}

function isInside({ planes }: Cover, [x, y, z]: Vec3): boolean {
  for (let k = 0; k < planes.length; k += 4) {
    if (planes[k] * x + planes[k + 1] * y + planes[k + 2] * z > planes[k + 3] + INSIDE_METRES) return false;
  }
  return true;
}

/** Lower over a floor than this a solid stands on it, metres. */
const STANDS_METRES = 2e-3;

/**
 * What stands on a level mirror together with its image in it, as one convex solid: what the eye's image behind the
 * mirror looks through, whether before the ray meets the mirror or after. Without what does not stand on it, and without
 * what is wider above than below, which is not convex together with its image.
 */
export function doubled(covers: readonly Cover[], floorMetres: number): readonly Cover[] {
  return covers.flatMap(({ planes, centre, radius }) => {
    const both: number[] = [];
    for (let k = 0; k < planes.length; k += 4) {
      const [a, b, c, d] = planes.subarray(k, k + 4);
      if (Math.abs(b) < 1e-9) both.push(a, 0, c, d);
      else if (b > 0) both.push(a, b, c, d, a, -b, c, d - 2 * b * floorMetres);
      else if (b > -1 + 1e-9 || -d > floorMetres + STANDS_METRES) return [];
    }
    const rise = Math.abs(centre[1] - floorMetres);
    return [
      {
        planes: Float64Array.from(both),
        centre: [centre[0], floorMetres, centre[2]],
        radius: radius + rise,
      },
    ];
  });
}

/** Directions from an eye that are kept apart. */
const WAYS = 64;
const wayOf = (angle: number): number => Math.floor((angle / (2 * Math.PI)) * WAYS);

/**
 * The covers that may lie between an eye and what stands in the direction of a place [x, z]. Those that the eye is
 * inside of are none.
 */
export function coversBefore(
  covers: readonly Cover[],
  eye: Vec3,
): (x: number, z: number) => readonly Cover[] {
  const ways: Cover[][] = Array.from({ length: WAYS }, () => []);
  for (const cover of covers) {
    const [dx, dz] = [cover.centre[0] - eye[0], cover.centre[2] - eye[2]];
    const away = hypot(dx, dz);
    if (isInside(cover, eye)) continue;
    if (away <= cover.radius) {
      for (const way of ways) way.push(cover);
      continue;
    }
    const middle = atan2(dz, dx);
    const half = asin(cover.radius / away);
    const from = wayOf(middle - half);
    const to = Math.min(from + WAYS - 1, wayOf(middle + half));
    for (let way = from; way <= to; way += 1) ways[(way + 2 * WAYS) % WAYS].push(cover);
  }
  return (x, z) => ways[(wayOf(atan2(z - eye[2], x - eye[0])) + 2 * WAYS) % WAYS];
}
