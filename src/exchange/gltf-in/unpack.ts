import { type Accessor, type Document, Logger, WebIO } from '@gltf-transform/core';
import {
  EXTMeshoptCompression,
  KHRDracoMeshCompression,
  KHRMeshQuantization,
} from '@gltf-transform/extensions';
import type { DecoderModule } from 'draco3dgltf';
import { MeshoptDecoder } from 'meshoptimizer';
import { ModelFault } from './modelFault';
import { forUnpacking, isDraco, type Trimmed } from './trimmed';

/** Makes the decoder of Draco's triangles: the page and Node find its program in different places. */
export type MakeDraco = () => Promise<DecoderModule>;

/** The library's name for the binary buffer of a GLB. */
const GLB_BUFFER = '@glb.bin';

/** Unpacks the triangles of a description. @throws ModelFault when they cannot be unpacked */
export async function unpacked(
  trim: Trimmed,
  binary: Uint8Array<ArrayBuffer> | null,
  makeDraco: MakeDraco,
): Promise<Document> {
  try {
    await MeshoptDecoder.ready;
    const io = new WebIO()
      .setLogger(new Logger(Logger.Verbosity.SILENT))
      .registerExtensions([EXTMeshoptCompression, KHRDracoMeshCompression, KHRMeshQuantization])
      .registerDependencies({
        'meshopt.decoder': MeshoptDecoder,
        ...(isDraco(trim.description) ? { 'draco3d.decoder': await makeDraco() } : {}),
      });
    return await io.readJSON({
      json: forUnpacking(trim),
      resources: binary ? { [GLB_BUFFER]: binary } : {},
    });
  } catch {
    // The library's own words speak of its insides; what helps a person is the same whatever it stumbled over.
    throw new ModelFault(
      'The triangles in the file cannot be unpacked: its bytes are damaged. Copy the file once more, or save it anew.',
    );
  }
}

/** The values of a list, whole numbers that stand for fractions made fractions. */
export function valuesOf(accessor: Accessor): ArrayLike<number> {
  const array = accessor.getArray();
  if (!array) return [];
  if (!accessor.getNormalized() || array instanceof Float32Array) return array;
  const most = LARGEST[array.constructor.name] ?? 1;
  const fractions = new Float32Array(array.length);
  for (let k = 0; k < array.length; k += 1) fractions[k] = Math.max(array[k] / most, -1);
  return fractions;
}

const LARGEST: Readonly<Record<string, number>> = {
  Int8Array: 127,
  Uint8Array: 255,
  Int16Array: 32767,
  Uint16Array: 65535,
  Uint32Array: 4294967295,
};
