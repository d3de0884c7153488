import { add, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { cameraAt } from '../optics/camera';
import { undistort } from '../optics/distortion';
import type { Camera } from '../optics/types';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { look, scratchFor } from '../sight/look';
import { meets, type Ray } from '../sight/rays';
import type { SightStage, StagePart } from '../sight/stage';
import { greyLuminance, LEAST_LUMINANCE, stopsBetween } from './exposure';
import { floorSheen } from './floorSheen';
import { rayOfPixel } from './frameSamples';
import { type LightScene, lightScene } from './lightScene';
import { partLuminance } from './partLuminance';
import { skyLuminance } from './surroundings';

/** What a spot meter reads at a place of the frame. */
export interface SpotReading {
  /** Null for the sky. */
  readonly hit: {
    readonly itemId: string;
    readonly label: string;
    readonly part: string;
    readonly at: Vec3;
    readonly metres: number;
    /** On what is hit, lux; 0 for what shines itself. */
    readonly lux: number;
  } | null;
  /** cd/m². */
  readonly luminance: number;
  /** Over what the set exposure renders as middle grey. */
  readonly stops: number;
}

/** Off the surface, so that it does not stand in its own light; metres. */
const OFF_METRES = 0.003;

/** The ray through a place of the delivered frame, 0..1 from its left and top edges; null outside a bent lens's field. */
function rayThrough({ pose, frame }: Camera, x: number, y: number): Ray | null {
  const drawn = [(2 * x - 1) * frame.tanHalfWidth, (2 * y - 1) * frame.tanHalfHeight] as const;
  const straight = frame.distortion ? undistort(frame.distortion, ...drawn) : drawn;
  if (!straight) return null;
  const across = add(scale(pose.right, straight[0]), scale(pose.up, -straight[1]));
  return { origin: pose.position, direction: add(pose.forward, across) };
}

/** The nearest solid part, in ways of the ray; what is porous, as wire mesh or glass, is seen through. */
function nearestSolid(
  stage: SightStage,
  ray: Ray,
): { readonly part: StagePart; readonly way: number } | null {
  let found: { part: StagePart; way: number } | null = null;
  for (const part of stage.parts) {
    if (part.shape.openness !== null) continue;
    const way = meets(part, ray);
    if (way < (found?.way ?? Infinity)) found = { part, way };
  }
  return found;
}

/** Luminance of a part along a ray, cd/m²; of a deck with what it mirrors of the lamps. Null where it is not met. */
function seenLuminance(
  scene: LightScene,
  part: StagePart,
  ray: Ray,
): { readonly total: number; readonly lux: number } | null {
  const own = partLuminance(scene, part, ray);
  if (!own || scene.blockers.stage.forms[part.item].kind !== 'deck') return own;
  const toEye = scale(unit(ray.direction), -1);
  if (toEye[1] <= 0) return own;
  const place = subtract(ray.origin, scale(toEye, own.metres));
  return { total: own.total + floorSheen(scene, add(place, [0, OFF_METRES, 0]), toEye), lux: own.lux };
}

/**
 * What a spot meter reads at a place of a setup's frame, 0..1 from its left and top edges, at an instant of the
 * action's clock, seconds: the luminance of the nearest solid thing there, diffuse and sheen, of a deck with what
 * it mirrors of the lamps, or of the sky. Null where a bent lens shows nothing.
 * `scene`: of the same setup and instant, for whoever asks often.
 */
export function spotAt(
  plan: Plan,
  setup: Setup,
  seconds: number,
  x: number,
  y: number,
  scene: LightScene = lightScene(plan, setup, seconds),
): SpotReading | null {
  const ray = rayThrough(cameraAt(plan, setup, seconds), x, y);
  if (!ray) return null;
  const grey = greyLuminance(setup);
  const { stage } = scene.blockers;
  const found = nearestSolid(stage, ray);
  const seen = found && seenLuminance(scene, found.part, ray);
  const luminance = Math.max(
    LEAST_LUMINANCE,
    seen ? seen.total : skyLuminance(scene.ambient, unit(ray.direction)),
  );
  const stops = stopsBetween(grey, luminance);
  if (!found || !seen) return { hit: null, luminance, stops };
  const form = stage.forms[found.part.item];
  const way = scale(ray.direction, found.way);
  return {
    hit: {
      itemId: form.id,
      label: form.label,
      part: found.part.name,
      at: add(ray.origin, way),
      metres: length(way),
      lux: seen.lux,
    },
    luminance,
    stops,
  };
}

/** Stops from middle grey over a frame, in cells. */
export interface FrameLevels {
  readonly columns: number;
  readonly rows: number;
  /** Row by row from the upper left. */
  readonly stops: Float64Array;
}

/**
 * Stops of what a setup's lens sees from what its exposure renders as middle grey, over the delivered frame, a reading
 * in the middle of each cell. Yields the done share after each column. A lens that bends is taken as straight.
 */
export function* frameLevelSteps(
  plan: Plan,
  setup: Setup,
  seconds: number,
  columns: number,
): Generator<number, FrameLevels, void> {
  const scene = lightScene(plan, setup, seconds);
  const bent = cameraAt(plan, setup, seconds);
  const camera: Camera = { ...bent, frame: { ...bent.frame, distortion: null } };
  const seen = look(scene.blockers.stage, camera, scratchFor(camera, columns));
  const { width, height } = seen.grid;
  const grey = greyLuminance(setup);
  const stops = new Float64Array(width * height);
  for (let column = 0; column < width; column += 1) {
    for (let row = 0; row < height; row += 1) {
      const ray = rayOfPixel(seen, column, row);
      const tag = seen.buffer.owner[column * height + row];
      const part = tag === 0 ? null : seen.stage.parts[tag - 1];
      const own = part && seenLuminance(scene, part, ray);
      const luminance = own?.total ?? skyLuminance(scene.ambient, unit(ray.direction));
      stops[row * width + column] = stopsBetween(grey, Math.max(LEAST_LUMINANCE, luminance));
    }
    yield (column + 1) / width;
  }
  return { columns: width, rows: height, stops };
}
