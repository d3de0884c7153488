import { moved, turned } from '../form/build/placement';
import { add, dot, length, scale, subtract, unit, type Vec3 } from '../form/build/vector';
import { type Eye, eyesAt } from '../form/figure/eyes';
import { clothPlace } from '../form/gear/cloth';
import { cameraAt } from '../optics/camera';
import { isInFrame, projectPoint } from '../optics/project';
import type { Camera } from '../optics/types';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { atan2, cos } from '../units/steadyMath';
import { partsAlong, passingShare } from './blockers';
import { clothLight, givingFaces } from './clothLight';
import { greyLuminance, stopsBetween } from './exposure';
import { IRIS_METRES, imageMetres, irisMiddle, type Mirroring, mirroring, TEARS_INDEX } from './eyeMirror';
import { fresnel } from './fresnel';
import { glowFaceArea } from './glowArea';
import { lampLight } from './lampLight';
import { type LightScene, lightScene } from './lightScene';
import { vectorOf } from './sourceLight';

/** A source that is seen in an eye. */
export interface CatchLight {
  readonly itemId: string;
  /** The performer's own. */
  readonly eye: 'left' | 'right';
  /** Where in the iris as the camera sees it, by the face of a clock: 12 is up in the picture. */
  readonly clock: number;
  /** How far from the middle of the iris: 0 in the middle, 1 at its edge. */
  readonly outShare: number;
  /** Its longer side against the width of the iris. */
  readonly sizeShareOfIris: number;
  /** Of what a pixel gets of it, over middle grey. */
  readonly stops: number;
  /** How many of the item's lamps are mirrored there, as of a string of bulbs; the other fields are of the brightest. */
  readonly count: number;
}

/** The catch lights of one performer: none where nothing is mirrored to the lens, or the eyes are not seen. */
export interface CatchLights {
  readonly performerId: string;
  /** Whether an eye that looks somewhere near the lens is in frame with nothing before it. */
  readonly seesEyes: boolean;
  /** Brightest first. */
  readonly lights: readonly CatchLight[];
}

/** Beyond this off the lens an eye is seen from the side, and says nothing. Source: common practice, no source */
const FARTHEST_DEGREES = 80;
const FARTHEST_COSINE = cos((FARTHEST_DEGREES * Math.PI) / 180);
/** Skin nearer to the eye than this counts as its lids, which `mirroring` knows better than a figure of a few hundred corners does. */
const OFF_METRES = 0.012;
/** Less than this over grey is not told from a dark iris. Source: common practice, no source */
const LEAST_STOPS = -3;
/** Pixels of a delivered frame across; what is smaller than one is spread over one. Source: common practice, no source */
const PIXELS_ACROSS = 2048;

interface Viewed {
  readonly scene: LightScene;
  readonly camera: Camera;
  readonly grey: number;
}

/** A glow that reaches an eye. */
interface Glow {
  readonly itemId: string;
  readonly middle: Vec3;
  /** Towards the eye, cd/m²; what is hidden of it left out. */
  readonly luminance: number;
  /** Its longer and shorter side as the eye sees it, metres. */
  readonly sides: readonly [longer: number, shorter: number];
}

/** A side of a face as it is seen along a way. */
const across = (side: Vec3, metres: number, way: Vec3): number => {
  const along = dot(side, way);
  return metres * Math.sqrt(Math.max(0, 1 - along * along));
};
const sorted = (a: number, b: number): readonly [number, number] => [Math.max(a, b), Math.min(a, b)];

function lampGlow(scene: LightScene, lamp: LightScene['lamps'][number], eye: Vec3): Glow | null {
  const light = lampLight(scene, lamp, eye, {});
  if (!light || light.visible === 0) return null;
  const { face, form } = lamp;
  const way = unit(subtract(eye, face.middle));
  const candela = length(vectorOf([light])) * light.metres * light.metres;
  const [wide, high] = [2 * face.halfWidth, 2 * face.halfHeight];
  return {
    itemId: form.itemId,
    middle: face.middle,
    luminance: candela / glowFaceArea(face, dot(way, form.direction)),
    sides:
      face.outline === 'ball'
        ? sorted(wide, high)
        : sorted(across(face.right, wide, way), across(face.up, high, way)),
  };
}

function clothGlow(scene: LightScene, cloth: LightScene['cloths'][number], eye: Vec3): Glow | null {
  const { placement } = clothPlace(cloth, scene.plan);
  const face = givingFaces(scene, cloth).find(({ middle, normal }) => dot(subtract(eye, middle), normal) > 0);
  const light = face && clothLight(scene, cloth, eye, {});
  if (!face || !light || light.visible === 0) return null;
  const way = unit(subtract(eye, face.middle));
  const [wide, high] = face.size;
  return {
    itemId: cloth.id,
    middle: face.middle,
    luminance: (face.candela / (wide * high)) * light.visible,
    sides: sorted(
      across(turned(placement, [1, 0, 0]), wide, way),
      across(turned(placement, [0, 1, 0]), high, way),
    ),
  };
}

/** Where on the face of a clock something lies, by how far to the right and how far up. */
function clockOf(right: number, up: number): number {
  const hour = Math.round((atan2(right, up) * 6) / Math.PI);
  return ((hour + 11) % 12) + 1;
}

function inEye({ camera, grey }: Viewed, eye: Eye, glow: Glow, at: Mirroring): CatchLight | null {
  const { pose, frame } = camera;
  const metres = length(subtract(glow.middle, at.at));
  const [longer, shorter] = glow.sides.map((side) => imageMetres(side, metres));
  const pixel = (2 * frame.tanHalfWidth * length(subtract(at.at, pose.position))) / PIXELS_ACROSS;
  const filled = Math.min(1, longer / pixel) * Math.min(1, shorter / pixel);
  const luminance = glow.luminance * fresnel(at.cosine, TEARS_INDEX).unpolarised * filled;
  if (!(luminance > 0)) return null;
  const stops = stopsBetween(grey, luminance);
  if (stops < LEAST_STOPS) return null;
  const from = subtract(at.at, irisMiddle(eye));
  const [right, up] = [dot(from, pose.right), dot(from, pose.up)];
  return {
    itemId: glow.itemId,
    eye: eye.eye,
    clock: clockOf(right, up),
    outShare: Math.min(1, Math.sqrt(right * right + up * up) / IRIS_METRES),
    sizeShareOfIris: longer / (2 * IRIS_METRES),
    stops,
    count: 1,
  };
}

/** Whether an eye is in frame, looks near enough to the lens, and nothing solid is before it. */
function isSeen({ scene, camera }: Viewed, { apex, forward }: Eye): boolean {
  const { position } = camera.pose;
  const toCamera = subtract(position, apex);
  if (dot(unit(toCamera), forward) < FARTHEST_COSINE) return false;
  const shown = projectPoint(camera, apex);
  if (!shown || !isInFrame(shown)) return false;
  const off = add(apex, scale(unit(toCamera), OFF_METRES));
  const parts = partsAlong(scene.blockers, off, position, 0, () => false);
  return passingShare(parts, off, position) > 0;
}

/** The glows of all lamps and cloths that one eye mirrors to the lens, one for each item. */
function lightsIn(viewed: Viewed, eye: Eye): readonly CatchLight[] {
  const { scene, camera } = viewed;
  const found = new Map<string, CatchLight>();
  const glows = [
    ...scene.lamps.map((lamp) => ({
      middle: lamp.face.middle,
      from: (at: Vec3) => lampGlow(scene, lamp, at),
    })),
    ...scene.cloths.map((cloth) => ({
      middle: moved(clothPlace(cloth, scene.plan).placement, [0, 0, 0]),
      from: (at: Vec3) => clothGlow(scene, cloth, at),
    })),
  ];
  for (const { middle, from } of glows) {
    const at = mirroring(eye, middle, camera.pose.position);
    const glow = at && from(add(at.at, scale(unit(subtract(middle, at.at)), OFF_METRES)));
    const light = at && glow && inEye(viewed, eye, glow, at);
    if (!light) continue;
    const known = found.get(light.itemId);
    const brightest = known && known.stops >= light.stops ? known : light;
    found.set(light.itemId, { ...brightest, count: (known?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

/**
 * What is mirrored in the eyes of the cast to a setup's lens at an instant, seconds: lamps, bulbs, bounces and frames,
 * past all that stands in their way, the brow, the nose and a cap of their own included. Lit windows, skylines and the
 * sky are too dark to be seen in an eye at any stop that is used at night, and are left out.
 *
 * Source: [purkinje-image], [water-reflectance]
 */
export function catchLights(
  plan: Plan,
  setup: Setup,
  seconds: number,
  scene: LightScene = lightScene(plan, setup, seconds),
): readonly CatchLights[] {
  const acted = played(plan, setup);
  const viewed: Viewed = {
    scene,
    camera: cameraAt(plan, setup, seconds),
    grey: greyLuminance(setup),
  };
  return acted.cast.map((performer): CatchLights => {
    const seen = eyesAt(performer, acted, seconds).filter((eye) => isSeen(viewed, eye));
    const lights = seen.flatMap((eye) => lightsIn(viewed, eye)).sort((a, b) => b.stops - a.stops);
    return { performerId: performer.id, seesEyes: seen.length > 0, lights };
  });
}
