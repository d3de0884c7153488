import { LARGEST_ASSET_BYTES } from '../../core/plan/schema/asset';
import { counted, ModelFault } from './modelFault';

const MAGIC = 0x46546c67;
const VERSION = 2;
const JSON_CHUNK = 0x4e4f534a;
const BINARY_CHUNK = 0x004e4942;
const HEADER_BYTES = 12;
const CHUNK_HEADER_BYTES = 8;
/** A description longer than this is no model of a roof. */
const LARGEST_TEXT_BYTES = 64 * 1024 * 1024;

/** What a GLB file holds: its description, not checked yet, and its one binary buffer. */
export interface Container {
  readonly description: unknown;
  readonly binary: Uint8Array<ArrayBuffer> | null;
}

const startsLikeText = (bytes: Uint8Array): boolean => /^[\s\uFEFF]*\{/.test(textOf(bytes.subarray(0, 64)));
const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/**
 * Opens a GLB file (binary glTF 2.0).
 *
 * @throws ModelFault for what is no GLB, is cut short, or is larger than can be kept
 */
export function openContainer(bytes: Uint8Array<ArrayBuffer>): Container {
  if (bytes.length > LARGEST_ASSET_BYTES) {
    throw new ModelFault(
      `The file has ${counted(bytes.length)} bytes; at most ${counted(LARGEST_ASSET_BYTES)} can be kept. Save a smaller model.`,
    );
  }
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 4 || view.getUint32(0, true) !== MAGIC) throw notGlb(bytes);
  if (bytes.length < HEADER_BYTES + CHUNK_HEADER_BYTES) throw cutShort(null, bytes.length);
  const version = view.getUint32(4, true);
  if (version !== VERSION) {
    throw new ModelFault(`The file is GLB version ${version}, expected version 2. Save it anew as glTF 2.0.`);
  }
  const size = view.getUint32(8, true);
  if (size > bytes.length) throw cutShort(size, bytes.length);

  const textBytes = view.getUint32(HEADER_BYTES, true);
  if (view.getUint32(HEADER_BYTES + 4, true) !== JSON_CHUNK) {
    throw new ModelFault('The file does not begin with the description of its model, as a GLB file must.');
  }
  const textStart = HEADER_BYTES + CHUNK_HEADER_BYTES;
  if (textStart + textBytes > size) throw cutShort(textStart + textBytes, size);
  if (textBytes > LARGEST_TEXT_BYTES) {
    throw new ModelFault(
      `The description in the file has ${counted(textBytes)} bytes, expected at most ${counted(LARGEST_TEXT_BYTES)}.`,
    );
  }
  return {
    description: parsed(textOf(bytes.subarray(textStart, textStart + textBytes))),
    binary: binaryIn(bytes, view, textStart + textBytes, size),
  };
}

function binaryIn(
  bytes: Uint8Array<ArrayBuffer>,
  view: DataView,
  start: number,
  size: number,
): Uint8Array<ArrayBuffer> | null {
  if (start + CHUNK_HEADER_BYTES > size) return null;
  const length = view.getUint32(start, true);
  if (view.getUint32(start + 4, true) !== BINARY_CHUNK) return null;
  const from = start + CHUNK_HEADER_BYTES;
  if (from + length > size) throw cutShort(from + length, size);
  return bytes.subarray(from, from + length);
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new ModelFault('The description in the file is not JSON, as it must be in a GLB file.');
  }
}

function notGlb(bytes: Uint8Array): ModelFault {
  return startsLikeText(bytes)
    ? new ModelFault(
        'The file is text, as a .gltf is: its triangles lie in other files. Save the model as one binary file, a .glb.',
      )
    : new ModelFault('The file is no GLB: it does not begin with the letters glTF.');
}

const cutShort = (wanted: number | null, found: number): ModelFault =>
  new ModelFault(
    wanted === null
      ? `The file is cut short: it has only ${counted(found)} bytes. Copy it once more.`
      : `The file is cut short: it should have ${counted(wanted)} bytes and has ${counted(found)}. Copy it once more.`,
  );
