import { moved } from '../../core/form/build/placement';
import { add, frameAround, scale, subtract, unit, type Vec3 } from '../../core/form/build/vector';
import { hullOf } from '../../core/form/fromAbove/hull';
import type { PartShape, PlacedPart, Tube } from '../../core/form/types';
import { cameraAt } from '../../core/optics/camera';
import { type Projected, projectPoint } from '../../core/optics/project';
import { formThrough } from '../../core/optics/riding';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { FrameEdge, ItemReport } from '../../core/report/types';
import { polygonWithin } from '../overhead/geometry/clipping';
import type { Spot } from '../overhead/geometry/spots';

/** What is seen of an item: which plan, through which setup, when. */
export interface Sighting {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly seconds: number;
}

/** A part of more round members than this is outlined as a whole: nobody could read so many outlines. */
const MOST_TUBES = 40;
/** What sticks out of a round member by no more than this, metres, is a collar or a knob of it. */
const COLLAR = 0.03;

/** The bits of a part that are outlined each by itself, as points in the part's own frame. */
const kept = new WeakMap<PartShape, readonly (readonly Vec3[])[]>();

function bitsOf(shape: PartShape): readonly (readonly Vec3[])[] {
  const known = kept.get(shape);
  if (known) return known;
  const corners = cornersOf(shape);
  const bits = areRound(corners, shape.tubes) ? shape.tubes.map(cornersOfTube) : [corners];
  kept.set(shape, bits);
  return bits;
}

const cornersOf = ({ positions }: PartShape): readonly Vec3[] =>
  Array.from(
    { length: positions.length / 3 },
    (_, k): Vec3 => [positions[3 * k], positions[3 * k + 1], positions[3 * k + 2]],
  );

function cornersOfTube({ from, to, radius }: Tube): readonly Vec3[] {
  const [a, b] = frameAround(unit(subtract(to, from)));
  return [from, to].flatMap((end) =>
    [a, b].flatMap((side) => [add(end, scale(side, radius)), add(end, scale(side, -radius))]),
  );
}

/** Whether the round members are all that there is of the part. */
function areRound(corners: readonly Vec3[], tubes: readonly Tube[]): boolean {
  if (tubes.length === 0 || tubes.length > MOST_TUBES) return false;
  return corners.every((corner) => tubes.some((tube) => away(corner, tube) < tube.radius + COLLAR));
}

/** Distance of a point from the axis of a round member, metres. */
function away(point: Vec3, { from, to }: Tube): number {
  const along = subtract(to, from);
  const reach = subtract(point, from);
  const size = along[0] ** 2 + along[1] ** 2 + along[2] ** 2;
  const dot = reach[0] * along[0] + reach[1] * along[1] + reach[2] * along[2];
  const share = size === 0 ? 0 : Math.min(1, Math.max(0, dot / size));
  return Math.hypot(...subtract(reach, scale(along, share)));
}

const placed = ({ worldFromPart }: PlacedPart, points: readonly Vec3[]): readonly Vec3[] =>
  worldFromPart ? points.map((point) => moved(worldFromPart, point)) : points;

/**
 * Outlines of what shows of an item, in 0..1 of the frame, each round member by itself, cut to what the report saw;
 * empty where a part reaches behind the camera, so that its outline is no polygon.
 */
export function outlinesInFrame({ plan, setup, seconds }: Sighting, item: ItemReport): readonly Spot[][] {
  const { extent } = item;
  const form = formThrough(plan, setup, item.id, seconds);
  if (!form || !extent) return [];
  const camera = cameraAt(plan, setup, seconds);
  const names = new Set(item.parts.map(({ name }) => name));
  const outlines: Spot[][] = [];
  for (const part of form.parts) {
    if (!names.has(part.name)) continue;
    for (const bit of bitsOf(part.shape)) {
      const points = placed(part, bit).map((point) => projectPoint(camera, point));
      const seen = points.flatMap((point): Spot[] => (point ? [[point.x, point.y]] : []));
      if (seen.length < points.length) return [];
      const outline = polygonWithin(hullOf(seen), extent);
      if (outline.length > 2) outlines.push(outline);
    }
  }
  return outlines;
}

/** How far a point lies beyond each edge, in the unit of the frame; negative inside. */
const BEYOND: Readonly<Record<FrameEdge, (at: Projected) => number>> = {
  left: ({ x }) => -x,
  right: ({ x }) => x - 1,
  top: ({ y }) => -y,
  bottom: ({ y }) => y - 1,
};

/**
 * Where along the edge of the frame an item outside of it comes nearest: 0..1 from the left or from the top; null when
 * nothing of it is before the camera.
 */
export function alongEdge({ plan, setup, seconds }: Sighting, id: string, edge: FrameEdge): number | null {
  const form = formThrough(plan, setup, id, seconds);
  if (!form) return null;
  const camera = cameraAt(plan, setup, seconds);
  const beyond = BEYOND[edge];
  let nearest: Projected | null = null;
  for (const part of form.parts) {
    for (const point of placed(part, cornersOf(part.shape))) {
      const at = projectPoint(camera, point);
      if (at && (!nearest || Math.abs(beyond(at)) < Math.abs(beyond(nearest)))) nearest = at;
    }
  }
  if (!nearest) return null;
  const along = edge === 'left' || edge === 'right' ? nearest.y : nearest.x;
  return Math.min(1, Math.max(0, along));
}
