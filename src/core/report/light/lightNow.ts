import { keyReading } from '../../continuity/keySideReading';
import type { Side } from '../../continuity/types';
import { askedLux } from '../../light/exposure';
import { type FaceLight, type FacePlane, faceAt, faceLight, planeOf } from '../../light/face';
import { type FaceLevels, levelsOn } from '../../light/levels';
import type { LightScene } from '../../light/lightScene';
import { cameraAt } from '../../optics/camera';
import { played } from '../../plan/played';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';

/** What one lamp, string or cloth gives to a face. */
export interface GivenToFace {
  readonly itemId: string;
  /** The lamp that gives a cloth most of its light; null for a lamp itself. */
  readonly fedBy: string | null;
  /** From before the face on the best of its planes, from behind on its edge. */
  readonly lux: number;
  readonly isAhead: boolean;
  /** Which plane of the face those lux are on. */
  readonly plane: FacePlane;
  /** What of all light on that plane they are, sky, streets and moon included; 0 to 1. */
  readonly share: number;
  /** From the eyes to the lamp's face or the middle of the cloth; of a string, to the bulb that gives most. */
  readonly metres: number;
  /** Off the way that the face looks, on the level: positive to the performer's own right, −180 to 180. */
  readonly bearingDegrees: number;
  /** Above the level of the eyes, negative under it. */
  readonly elevationDegrees: number;
  /** How wide an edge half a metre before the face throws its shadow onto it, metres; null for what is nearer than that. */
  readonly shadowEdgeMetres: number | null;
}

/** The light on one face at an instant. */
export interface FaceNow extends FaceLevels {
  /** The side of the frame that the key comes from; null near the lens, without a key, and without a setup. */
  readonly cameraSide: Side | null;
  /** Strongest first. */
  readonly given: readonly GivenToFace[];
}

/** The light on all faces at an instant. */
export interface LightNow {
  /** Null for the roof as the plan has it. */
  readonly setupId: string | null;
  readonly seconds: number;
  /** What the stop asks for, lux; null without a setup. */
  readonly askedLux: number | null;
  readonly faces: readonly FaceNow[];
}

const givenBy = ({ sources, lux: all }: FaceLight): readonly GivenToFace[] =>
  sources
    .map((source): GivenToFace => {
      const { itemId, fedBy, isAhead, metres, bearingDegrees, elevationDegrees, shadowEdgeMetres } = source;
      const plane = planeOf(source);
      const lux = source.lux[plane];
      const share = all[plane] > 0 ? lux / all[plane] : 0;
      const from = { metres, bearingDegrees, elevationDegrees, shadowEdgeMetres };
      return { itemId, fedBy, lux, isAhead, plane, share, ...from };
    })
    .sort((a, b) => b.lux - a.lux);

/** What falls on each face in a scene of the plan, through a setup or, for none, on the roof. */
export function lightNow(plan: Plan, setup: Setup | null, scene: LightScene): LightNow {
  const { seconds } = scene;
  const acted = setup ? played(plan, setup) : plan;
  const camera = setup && cameraAt(plan, setup, seconds);
  const asked = setup && askedLux(setup);
  return {
    setupId: setup?.id ?? null,
    seconds,
    askedLux: asked,
    faces: acted.cast.flatMap((performer): FaceNow[] => {
      const face = faceAt(performer, acted, seconds);
      if (!face) return [];
      const light = faceLight(scene, face);
      const cameraSide = camera ? keyReading(light, camera, seconds).cameraSide : null;
      return [{ ...levelsOn(light, asked), cameraSide, given: givenBy(light) }];
    }),
  };
}
