import { zlibSync } from 'fflate';
import { type ClearGround, GROUND_STATES, type GroundState } from '../core/clearance/ground/types';
import { pngChunk, pngOf, withPngTexts } from './pngText';

/** From paper to ink, the worse the darker, so that the order is plain without colours. Where there is no deck: nothing. */
const COLOURS: Readonly<Record<GroundState, readonly [number, number, number, number]>> = {
  'no deck': [255, 255, 255, 0],
  clear: [240, 243, 236, 255],
  close: [205, 216, 209, 255],
  covered: [156, 178, 183, 255],
  mirrored: [92, 124, 145, 255],
  showing: [31, 49, 69, 255],
};
/** Pixels along the longer side that are aimed at, and the most for a square. */
const LONG_SIDE = 1200;
const LARGEST_SQUARE = 24;

/**
 * Clear ground as a PNG, as the overhead has it: x to the right, z down; a square is as many pixels wide as make some
 * 1,200 along the longer side.
 * @param texts fields of text by keyword, such as `Title`
 */
export function groundPng(
  { columns, rows, states }: ClearGround,
  texts: Readonly<Record<string, string>>,
): Uint8Array<ArrayBuffer> {
  const side = Math.max(1, Math.min(LARGEST_SQUARE, Math.floor(LONG_SIDE / Math.max(columns, rows))));
  const [width, height] = [columns * side, rows * side];
  // A filter byte, 0 for none, before the pixels of each line. Source: [png]
  const lines = new Uint8Array((width + 1) * height);
  for (let y = 0; y < height; y += 1) {
    const row = Math.floor(y / side);
    for (let x = 0; x < width; x += 1) {
      lines[y * (width + 1) + 1 + x] = states[row * columns + Math.floor(x / side)];
    }
  }
  const header = new Uint8Array(13);
  const view = new DataView(header.buffer);
  view.setUint32(0, width);
  view.setUint32(4, height);
  // Eight bits a pixel, by a palette. Source: [png]
  header.set([8, 3, 0, 0, 0], 8);
  const colours = GROUND_STATES.map((state) => COLOURS[state]);
  const png = pngOf([
    pngChunk('IHDR', header),
    pngChunk('PLTE', Uint8Array.from(colours.flatMap((colour) => colour.slice(0, 3)))),
    pngChunk(
      'tRNS',
      Uint8Array.from(colours, ([, , , opaque]) => opaque),
    ),
    pngChunk('IDAT', zlibSync(lines, { level: 9 })),
    pngChunk('IEND', new Uint8Array(0)),
  ]);
  return withPngTexts(png, texts);
}
