import type { Vec3 } from '../form/build/vector';
import { add, scale, subtract } from '../form/build/vector';
import { cameraFromWorld } from '../optics/project';
import type { Camera } from '../optics/types';
import { NEAREST_METRES } from './clip';
import type { Grid } from './grid';
import type { Instant } from './instant';
import type { Look } from './look';
import { heightOver, mirrorOf, reflected } from './mirrors';
import { meets, type Ray, showsAlong } from './rays';
import { placeIn, type SightStage, type StagePart, worldOf } from './stage';
import { rayThrough, sentOn } from './ways';

/** A part by its item and its place among that item's parts: what changes hands moves the numbers of the others. */
interface PartName {
  readonly item: number;
  readonly within: number;
}

/**
 * A place on an item that a lens saw, in the part's own coordinates: where it is seen again, so is the item, and
 * nothing has to be drawn to know.
 */
export interface Witness {
  readonly on: PartName;
  readonly place: Vec3;
  /** By way of which mirror; null for what is seen directly. */
  readonly mirror: PartName | null;
}

/** Nearer to the edge of the raster than this, pixels, no place stands for a sample. */
const EDGE_PIXELS = 1;

const nameOf = ({ firstPart }: SightStage, { item, index }: StagePart): PartName => ({
  item,
  within: index - firstPart[item],
});

function partNamed({ parts, firstPart }: SightStage, { item, within }: PartName): StagePart | null {
  const index = firstPart[item] + within;
  return index < firstPart[item + 1] ? parts[index] : null;
}

const along = ({ origin, direction }: Ray, distance: number): Vec3 => add(origin, scale(direction, distance));

/** A place where a look found an item, directly or in a mirror; null where it found none that a ray meets again. */
export function witnessOf(seen: Look, item: number, way: 'direct' | 'mirrored'): Witness | null {
  const { stage, grid } = seen;
  const { spots } = seen[way];
  if (spots.pixels[item] === 0) return null;
  const [x, y] = [spots.x[item], spots.y[item]];
  const part = stage.parts[spots.part[item]];
  const straight = rayThrough(seen, x, y);
  const at = Math.min(Math.floor(x), grid.width - 1) * grid.height + Math.min(Math.floor(y), grid.height - 1);
  const view =
    way === 'direct' ? null : seen.mirrors.find(({ face, part: { index } }) => face[at] === index + 1);
  if (view === undefined) return null;
  const ray = view ? sentOn(view.part, view, straight) : straight;
  const distance = ray ? meets(part, ray) : Infinity;
  if (!ray || !(distance < Infinity)) return null;
  return {
    on: nameOf(stage, part),
    place: placeIn(part, along(ray, distance)),
    mirror: view ? nameOf(stage, view.part) : null,
  };
}

/** Whether a sample of the delivered frame is where a world point falls. */
function fallsInFrame(point: Vec3, { pose }: Camera, grid: Grid): boolean {
  const [x, y, z] = cameraFromWorld(pose, point);
  if (!(z > NEAREST_METRES)) return false;
  const column = grid.axisX + (x / z) * grid.perTangentX;
  const row = grid.axisY - (y / z) * grid.perTangentY;
  return (
    column >= EDGE_PIXELS &&
    row >= EDGE_PIXELS &&
    column < grid.width - EDGE_PIXELS &&
    row < grid.height - EDGE_PIXELS &&
    grid.weights[Math.floor(column) * grid.height + Math.floor(row)] > 0
  );
}

/**
 * Whether a witness is seen at an instant: in frame, and nothing before it, nor before the mirror that it is seen in.
 * May say no where the item is seen in other places; yes only where the lens sees it.
 */
export function isSeenAgain({ on, place, mirror }: Witness, { stage, camera }: Instant, grid: Grid): boolean {
  const part = partNamed(stage, on);
  if (!part) return false;
  const eye = camera.pose.position;
  const point = worldOf(part, place);
  if (!mirror)
    return (
      fallsInFrame(point, camera, grid) &&
      showsAlong(stage, { origin: eye, direction: subtract(point, eye) }, part, null, [])
    );
  const face = partNamed(stage, mirror);
  const plane = face && mirrorOf(face);
  if (!face || !plane || heightOver(plane, eye) <= 0 || heightOver(plane, point) <= 0) return false;
  const image = reflected(point, plane);
  if (!fallsInFrame(image, camera, grid)) return false;
  const ray = { origin: eye, direction: subtract(image, eye) };
  const onward = sentOn(face, plane, ray);
  return (
    onward !== null && showsAlong(stage, ray, face, null, []) && showsAlong(stage, onward, part, face, [])
  );
}
