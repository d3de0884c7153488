const MAGIC = 0x46546c67;
const VERSION = 2;
const JSON_CHUNK = 0x4e4f534a;
const BINARY_CHUNK = 0x004e4942;
const HEADER_BYTES = 12;
const CHUNK_HEADER_BYTES = 8;
const SPACE = 0x20;

const padded = (bytes: number): number => Math.ceil(bytes / 4) * 4;

/** Packs a glTF document and its one binary buffer into a GLB container, both chunks padded to four bytes. */
export function packGlb(document: object, binary: Uint8Array): Uint8Array<ArrayBuffer> {
  const text = new TextEncoder().encode(JSON.stringify(document));
  const textBytes = padded(text.length);
  const binaryBytes = padded(binary.length);
  const hasBinary = binary.length > 0;
  const size =
    HEADER_BYTES + CHUNK_HEADER_BYTES + textBytes + (hasBinary ? CHUNK_HEADER_BYTES + binaryBytes : 0);

  const glb = new Uint8Array(size);
  const view = new DataView(glb.buffer);
  const words = [MAGIC, VERSION, size, textBytes, JSON_CHUNK];
  words.forEach((word, index) => {
    view.setUint32(index * 4, word, true);
  });
  const textStart = HEADER_BYTES + CHUNK_HEADER_BYTES;
  glb.set(text, textStart);
  glb.fill(SPACE, textStart + text.length, textStart + textBytes);
  if (hasBinary) {
    const start = textStart + textBytes;
    view.setUint32(start, binaryBytes, true);
    view.setUint32(start + 4, BINARY_CHUNK, true);
    glb.set(binary, start + CHUNK_HEADER_BYTES);
  }
  return glb;
}
