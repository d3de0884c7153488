import type { Vec3 } from '../form/build/vector';
import type { Ambient } from './ambient';
import { clothLight } from './clothLight';
import { lampLight } from './lampLight';
import type { LightScene } from './lightScene';
import { moonRay } from './moonRay';
import type { LightQuestion, SourceLight } from './sourceLight';

/** All that lamps and cloths send to a place, what of the moon gets there, and the night round it: see `ambientLux`. */
export interface LightAt {
  readonly point: Vec3;
  readonly sources: readonly SourceLight[];
  /** The moon's ray, as long as its lux; null in its shade, or where it is not out. */
  readonly moon: Vec3 | null;
  readonly ambient: Ambient;
}

/** What every lamp, bounce and diffusion frame of a scene, and the moon, send to a place, world metres. */
export function lightAt(scene: LightScene, point: Vec3, question: LightQuestion = {}): LightAt {
  const lamps = scene.lamps.flatMap((lamp) => lampLight(scene, lamp, point, question) ?? []);
  const cloths = scene.cloths.flatMap((cloth) => clothLight(scene, cloth, point, question) ?? []);
  return {
    point,
    sources: [...lamps, ...cloths],
    moon: moonRay(scene, point, question.ignore),
    ambient: scene.ambient,
  };
}
