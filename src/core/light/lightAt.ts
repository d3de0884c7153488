import type { Vec3 } from '../form/build/vector';
import { clothLight } from './clothLight';
import { lampLight } from './lampLight';
import type { LightScene } from './lightScene';
import type { LightQuestion, SourceLight } from './sourceLight';

/** All that lamps and cloths send to a place. Sky and streets are not in it: see `ambientLux`. */
export interface LightAt {
  readonly point: Vec3;
  readonly sources: readonly SourceLight[];
}

/** What every lamp, bounce and diffusion frame of a scene sends to a place, world metres. */
export function lightAt(scene: LightScene, point: Vec3, question: LightQuestion = {}): LightAt {
  const lamps = scene.lamps.flatMap((lamp) => lampLight(scene, lamp, point, question) ?? []);
  const cloths = scene.cloths.flatMap((cloth) => clothLight(scene, cloth, point, question) ?? []);
  return { point, sources: [...lamps, ...cloths] };
}
