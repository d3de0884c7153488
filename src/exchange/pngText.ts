import { crc32 } from './crc32';

/** Length, type and check of a chunk around its data, bytes. */
const AROUND = 12;
/** The signature, and the header chunk that has to come first. */
const BEFORE_TEXTS = 8 + AROUND + 13;
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
/** The most that a keyword may have, characters. */
const LONGEST_KEYWORD = 79;

const latin = (text: string): Uint8Array => Uint8Array.from(text, (letter) => letter.charCodeAt(0));
const isLatin = (text: string): boolean => [...text].every((letter) => letter.charCodeAt(0) <= 0xff);

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const all = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** A chunk: its length, type, data and check. Source: [png] */
export function pngChunk(type: string, data: Uint8Array): Uint8Array {
  const body = joined([latin(type), data]);
  const bytes = new Uint8Array(body.length + 8);
  const view = new DataView(bytes.buffer);
  view.setUint32(0, data.length);
  bytes.set(body, 4);
  view.setUint32(body.length + 4, crc32(body));
  return bytes;
}

/** A PNG of chunks. Source: [png] */
export const pngOf = (chunks: readonly Uint8Array[]): Uint8Array<ArrayBuffer> =>
  joined([Uint8Array.from(SIGNATURE), ...chunks]);

/** A field as a chunk: Latin-1 where its text has no other letters, else UTF-8. Source: [png] */
function textChunk(keyword: string, text: string): Uint8Array {
  const key = latin(keyword);
  if (isLatin(text)) return pngChunk('tEXt', joined([key, Uint8Array.of(0), latin(text)]));
  // Not compressed, no language, no translated keyword.
  return pngChunk('iTXt', joined([key, Uint8Array.of(0, 0, 0, 0, 0), new TextEncoder().encode(text)]));
}

/**
 * Puts fields of text into a PNG, right after its header.
 * @param texts by keyword: 1 to 79 letters of Latin-1
 * @throws an error for bytes that are no PNG, and for a keyword that PNG does not allow
 */
export function withPngTexts(
  png: Uint8Array,
  texts: Readonly<Record<string, string>>,
): Uint8Array<ArrayBuffer> {
  if (SIGNATURE.some((byte, k) => png[k] !== byte))
    throw new Error(`withPngTexts: found ${png.length} bytes that do not begin as a PNG does`);
  const chunks = Object.entries(texts).map(([keyword, text]) => {
    if (keyword.length === 0 || keyword.length > LONGEST_KEYWORD || !isLatin(keyword))
      throw new Error(`withPngTexts: found the keyword "${keyword}", expected 1 to 79 letters of Latin-1`);
    return textChunk(keyword, text);
  });
  return joined([png.subarray(0, BEFORE_TEXTS), ...chunks, png.subarray(BEFORE_TEXTS)]);
}
