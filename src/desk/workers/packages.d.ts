declare module 'draco3dgltf/draco_decoder_gltf_nodejs.js' {
  import type { DecoderModule } from 'draco3dgltf';

  const makeDecoder: (options: { readonly wasmBinary: ArrayBuffer }) => Promise<DecoderModule>;
  export default makeDecoder;
}

declare module '*.wasm?url' {
  const address: string;
  export default address;
}
