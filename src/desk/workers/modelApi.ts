import type { ReadModel } from '../../exchange/gltf-in/readModel';
import type { Hearing } from './hearing';

/** A model out of a file, or the sentence that says why there is none. */
export type ModelAnswer =
  | { readonly ok: true; readonly sha256: string; readonly read: ReadModel }
  | { readonly ok: false; readonly sentence: string };

/** What the worker that reads models answers. One worker reads one file: whoever stops it ends it. */
export interface ModelApi extends Hearing {
  /** Reads the bytes of a GLB file; `tell` is told the share that is done, 0..1. */
  readonly read: (bytes: ArrayBuffer, tell: (share: number) => void) => Promise<ModelAnswer>;
}
