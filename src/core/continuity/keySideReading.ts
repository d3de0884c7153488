import { dot, length, subtract, type Vec3 } from '../form/build/vector';
import { partsAlong, passingShare } from '../light/blockers';
import {
  bearingOffFace,
  type Face,
  type FaceLight,
  FRONTAL_DEGREES,
  faceAt,
  faceLight,
  type LitFrom,
} from '../light/face';
import { type LightScene, lightScene } from '../light/lightScene';
import { cameraAt, spanOf } from '../optics/camera';
import type { Camera } from '../optics/types';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { acos } from '../units/steadyMath';
import { framingOf } from './framing';
import type { Side } from './types';

/** The key on a face that a setup frames, at one instant of the action's clock. */
export interface KeyReading {
  readonly seconds: number;
  /** The face's own side that the key falls on, or why there is none. */
  readonly from: LitFrom;
  /** The lamp or cloth that is the key; null where none is. */
  readonly keyId: string | null;
  /** The lamp that gives a cloth most of its light; null for a lamp itself. */
  readonly fedBy: string | null;
  /** Off the way that the face looks, on the level, positive to its own right. */
  readonly offFaceDegrees: number | null;
  /** Off the way from the face to the lens, on the level, positive to camera right. */
  readonly offLensDegrees: number | null;
  /** The side of the frame that the key comes from; null near the lens's own direction. */
  readonly cameraSide: Side | null;
}

/** A face whose plane is turned away from the lens by more than this shows too little of itself. Source: common practice, no source */
const AWAY_DEGREES = 100;
/** A head under this share of the frame's height is too small for anyone to mind its key. Source: common practice, no source */
const LEAST_HEAD = 0.03;

/** The light of one plan through its setups; what was worked out for one setup serves all that see the same. */
export class KeyLight {
  private readonly scenes = new Map<Plan, Map<string, LightScene>>();
  private readonly lights = new Map<LightScene, Map<string, FaceLight | null>>();
  private last: LightScene | null = null;
  private readonly ridesDiffer: boolean;

  constructor(readonly plan: Plan) {
    this.ridesDiffer = plan.gear.some((gear) => gear.kind === 'dolly' && gear.rides !== undefined);
  }

  sceneThrough(setup: Setup, seconds: number): LightScene {
    const scene = played(this.plan, setup);
    const known = this.scenes.get(scene) ?? new Map<string, LightScene>();
    this.scenes.set(scene, known);
    const key = `${seconds} ${this.ridesDiffer ? setup.id : ''}`;
    const made = known.get(key) ?? lightScene(this.plan, setup, seconds, this.last);
    known.set(key, made);
    this.last = made;
    return made;
  }

  faceThrough(setup: Setup, performerId: string, seconds: number): Face | null {
    const scene = played(this.plan, setup);
    const performer = scene.cast.find(({ id }) => id === performerId);
    return performer ? faceAt(performer, scene, seconds) : null;
  }

  /** The light on a face as a setup plays it; null for nobody there. The same object where two setups play the same. */
  lightThrough(setup: Setup, performerId: string, seconds: number): FaceLight | null {
    const scene = this.sceneThrough(setup, seconds);
    const known = this.lights.get(scene) ?? new Map<string, FaceLight | null>();
    this.lights.set(scene, known);
    const found = known.get(performerId);
    if (found !== undefined) return found;
    const face = this.faceThrough(setup, performerId, seconds);
    const light = face ? faceLight(scene, face) : null;
    known.set(performerId, light);
    return light;
  }
}

/** The instants at which keys are read in a setup: its start, its middle, its end and the beats within. */
export function keyInstants(plan: Plan, setup: Setup): readonly number[] {
  const [from, to] = spanOf(plan, setup);
  const beats = plan.beats.map(({ atSeconds }) => atSeconds).filter((at) => at > from && at < to);
  return [...new Set([from, (from + to) / 2, to, ...beats])].sort((a, b) => a - b);
}

/** Whether anything but the performer stands whole between a face and the lens. */
function isCovered({ blockers }: LightScene, face: Face, lens: Vec3): boolean {
  const isOwn = ({ item }: { readonly item: number }) => blockers.stage.forms[item].id === face.performerId;
  return passingShare(partsAlong(blockers, face.at, lens, 0, isOwn), face.at, lens) === 0;
}

/**
 * Whether a setup shows a performer's face at an instant: the eyes inside the frame line, large enough, turned no more
 * than 100° from the lens, and nothing solid before them.
 */
export function showsFace(light: KeyLight, setup: Setup, performerId: string, seconds: number): boolean {
  const scene = played(light.plan, setup);
  const performer = scene.cast.find(({ id }) => id === performerId);
  const face = light.faceThrough(setup, performerId, seconds);
  if (!performer || !face) return false;
  const camera = cameraAt(light.plan, setup, seconds);
  const framing = framingOf(camera, scene, performer, seconds);
  if (!framing || framing.headHeight < LEAST_HEAD) return false;
  const [x, y] = framing.eyes;
  if (x < 0 || x > 1 || y < 0 || y > 1) return false;
  const towards = subtract(camera.pose.position, face.at);
  const turned = (acos(dot(towards, face.forward) / length(towards)) * 180) / Math.PI;
  return turned <= AWAY_DEGREES && !isCovered(light.sceneThrough(setup, seconds), face, camera.pose.position);
}

/** Degrees in −180 < d ≤ 180. */
export const signedDegrees = (degrees: number): number => 180 - ((((180 - degrees) % 360) + 360) % 360);

/** What the light on a face says of its key, as a camera sees it. */
export function keyReading({ face, key, from }: FaceLight, camera: Camera, seconds: number): KeyReading {
  if (!key || from === 'back' || from === 'dark')
    return {
      seconds,
      from,
      keyId: null,
      fedBy: null,
      offFaceDegrees: null,
      offLensDegrees: null,
      cameraSide: null,
    };
  const toLens = bearingOffFace(face, subtract(camera.pose.position, face.at));
  // Who looks into the lens has their own right at camera left.
  const offLensDegrees = signedDegrees(toLens - key.bearingDegrees);
  const isNearLens = Math.abs(offLensDegrees) <= FRONTAL_DEGREES;
  return {
    seconds,
    from,
    keyId: key.itemId,
    fedBy: key.fedBy,
    offFaceDegrees: key.bearingDegrees,
    offLensDegrees,
    cameraSide: isNearLens ? null : offLensDegrees < 0 ? 'left' : 'right',
  };
}

/** The key on a performer's face in a setup at an instant; null for nobody there. Whether the face shows is not asked. */
export function keyIn(
  light: KeyLight,
  setup: Setup,
  performerId: string,
  seconds: number,
): KeyReading | null {
  const found = light.lightThrough(setup, performerId, seconds);
  return found ? keyReading(found, cameraAt(light.plan, setup, seconds), seconds) : null;
}
