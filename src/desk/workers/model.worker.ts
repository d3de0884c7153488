import { expose, transfer } from 'comlink';
import type { DecoderModule } from 'draco3dgltf';
import decoderAddress from 'draco3dgltf/draco_decoder_gltf.wasm?url';
import makeDecoder from 'draco3dgltf/draco_decoder_gltf_nodejs.js';
import { ModelFault } from '../../exchange/gltf-in/modelFault';
import { type ReadModel, readModel } from '../../exchange/gltf-in/readModel';
import { sha256Of } from '../assets/sha256';
import { HEARING } from './hearing';
import type { ModelApi } from './modelApi';

/** The decoder's program lies beside the page, like everything else that it runs. */
async function makeDraco(): Promise<DecoderModule> {
  const wasmBinary = await (await fetch(decoderAddress)).arrayBuffer();
  return makeDecoder({ wasmBinary });
}

/** The memory of a model, to be handed over and not copied. */
function memoryOf({ model }: ReadModel): ArrayBufferLike[] {
  const buffers = model.chunks.flatMap(({ positions, indices, skin }) => [
    positions.buffer,
    indices.buffer,
    ...(skin ? [skin.colours.buffer, skin.normals?.buffer, skin.places?.buffer] : []),
  ]);
  return [...new Set(buffers.filter((buffer) => buffer !== undefined))];
}

const api: ModelApi = {
  ...HEARING,
  read: async (bytes, tell) => {
    try {
      const sha256 = await sha256Of(bytes);
      tell(0.05);
      const read = await readModel(new Uint8Array(bytes), makeDraco, tell);
      const memory = memoryOf(read).filter((buffer) => buffer instanceof ArrayBuffer);
      return transfer({ ok: true, sha256, read }, memory);
    } catch (error) {
      if (error instanceof ModelFault) return { ok: false, sentence: error.message };
      // Out of memory, mostly: the file asks for more than the browser gives.
      return {
        ok: false,
        sentence: 'The model is too large for this browser to unpack. Thin it out where it was made.',
      };
    }
  },
};

expose(api);
