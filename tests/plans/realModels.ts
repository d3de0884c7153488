import bunny from '@pmndrs/assets/models/bunny.glb.js';
import cube from '@pmndrs/assets/models/pmndrs.glb.js';
import suzi from '@pmndrs/assets/models/suzi.glb.js';
import draco from 'draco3dgltf';
import type { MakeDraco } from '../../src/exchange/gltf-in/unpack';

const bytesOf = (address: string): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(Buffer.from(address.slice(address.indexOf(',') + 1), 'base64'));

/**
 * Models of other people's making, packed with Draco: a scanned figure, a modelled head without a name of its own, and
 * a sign with a picture on it. They come with a package and are in the public domain.
 */
export const REAL_MODELS = { bunny: bytesOf(bunny), suzi: bytesOf(suzi), sign: bytesOf(cube) };

/** Draco's decoder as Node finds it. */
export const makeDraco: MakeDraco = () => draco.createDecoderModule({});
