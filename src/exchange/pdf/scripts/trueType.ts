import type { PathCommand } from '@cantoo/fontkit';

/** A glyph of a font that is made: its outline and its width, thousandths of the size. */
export interface MadeGlyph {
  readonly outline: readonly PathCommand[];
  readonly advance: number;
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly isOn: boolean;
}

const UNITS = 1000;
const bytesOf = (...parts: readonly (readonly [size: 1 | 2 | 4, value: number])[]): Uint8Array => {
  const bytes = new Uint8Array(parts.reduce((sum, [size]) => sum + size, 0));
  const view = new DataView(bytes.buffer);
  let at = 0;
  for (const [size, value] of parts) {
    if (size === 1) view.setUint8(at, value);
    else if (size === 2) view.setInt16(at, value);
    else view.setInt32(at, value);
    at += size;
  }
  return bytes;
};
const u16 = (value: number): [2, number] => [2, value];
const u32 = (value: number): [4, number] => [4, value];

/**
 * A TrueType font of such glyphs, the first of which stands for what is missing: the tables that a PDF file asks of
 * one. Source: [truetype]
 */
export function trueTypeFont(glyphs: readonly MadeGlyph[]): Uint8Array {
  const shapes = glyphs.map(({ outline }) => contoursOf(outline));
  const boxes = shapes.map(boxOf);
  const drawn = shapes.map((contours, k) => glyphBytes(contours, boxes[k]));
  let until = 0;
  const starts = [0, ...drawn.map(({ length }) => (until += length))];
  const most = (pick: (contours: readonly (readonly Spot[])[]) => number): number =>
    Math.max(0, ...shapes.map(pick));
  const [left, bottom, right, top] = boxes.reduce(
    (a, b) => [Math.min(a[0], b[0]), Math.min(a[1], b[1]), Math.max(a[2], b[2]), Math.max(a[3], b[3])],
    [0, 0, 0, 0],
  );
  const widest = Math.max(0, ...glyphs.map(({ advance }) => Math.round(advance)));
  return sealed([
    ['glyf', joined(drawn)],
    [
      'head',
      bytesOf(
        u32(0x10000),
        u32(0x10000),
        u32(0),
        u32(0x5f0f3cf5),
        u16(3),
        u16(UNITS),
        u32(0),
        u32(0),
        u32(0),
        u32(0),
        u16(left),
        u16(bottom),
        u16(right),
        u16(top),
        u16(0),
        u16(8),
        u16(2),
        u16(1),
        u16(0),
      ),
    ],
    [
      'hhea',
      bytesOf(
        u32(0x10000),
        u16(top),
        u16(bottom),
        u16(0),
        u16(widest),
        u16(left),
        u16(0),
        u16(right),
        u16(1),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(glyphs.length),
      ),
    ],
    ['hmtx', joined(glyphs.map(({ advance }, k) => bytesOf(u16(Math.round(advance)), u16(boxes[k][0]))))],
    ['loca', joined(starts.map((start) => bytesOf(u32(start))))],
    [
      'maxp',
      bytesOf(
        u32(0x10000),
        u16(glyphs.length),
        u16(most((all) => all.flat().length)),
        u16(most(({ length }) => length)),
        u16(0),
        u16(0),
        u16(1),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
        u16(0),
      ),
    ],
  ]);
}

/** Closed contours in whole units, of lines and quadratic curves. */
function contoursOf(outline: readonly PathCommand[]): readonly (readonly Spot[])[] {
  const contours: Spot[][] = [];
  const put = (x: number, y: number, isOn: boolean): void => {
    contours[contours.length - 1]?.push({ x: Math.round(x), y: Math.round(y), isOn });
  };
  for (const { command, args } of outline) {
    if (command === 'moveTo') contours.push([]);
    if (command === 'moveTo' || command === 'lineTo') put(args[0], args[1], true);
    if (command === 'quadraticCurveTo') {
      put(args[0], args[1], false);
      put(args[2], args[3], true);
    }
    if (command === 'bezierCurveTo') throw new Error('a font of cubic curves: expected quadratic ones');
  }
  return contours.map(withoutReturn).filter(({ length }) => length > 2);
}

/** A contour closes by itself: an end on its beginning is one point too many. */
function withoutReturn(contour: readonly Spot[]): readonly Spot[] {
  const [first, last] = [contour[0], contour[contour.length - 1]];
  return contour.length > 1 && last.isOn && first.x === last.x && first.y === last.y
    ? contour.slice(0, -1)
    : contour;
}

type Bounds = readonly [number, number, number, number];

function boxOf(contours: readonly (readonly Spot[])[]): Bounds {
  const spots = contours.flat();
  if (spots.length === 0) return [0, 0, 0, 0];
  const [xs, ys] = [spots.map(({ x }) => x), spots.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

/** Points one by one, each with two bytes for each way from the one before: little is gained by less. */
function glyphBytes(contours: readonly (readonly Spot[])[], [left, bottom, right, top]: Bounds): Uint8Array {
  if (contours.length === 0) return new Uint8Array(0);
  const spots = contours.flat();
  let end = -1;
  const bytes = bytesOf(
    u16(contours.length),
    ...[left, bottom, right, top].map(u16),
    ...contours.map(({ length }) => {
      end += length;
      return u16(end);
    }),
    u16(0),
    ...spots.map(({ isOn }): [1, number] => [1, isOn ? 1 : 0]),
    ...spots.map(({ x }, k) => u16(x - (spots[k - 1]?.x ?? 0))),
    ...spots.map(({ y }, k) => u16(y - (spots[k - 1]?.y ?? 0))),
  );
  return padded(bytes);
}

function padded(bytes: Uint8Array): Uint8Array {
  const whole = new Uint8Array((bytes.length + 3) & ~3);
  whole.set(bytes);
  return whole;
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}

function checksum(bytes: Uint8Array): number {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  let sum = 0;
  for (let at = 0; at < bytes.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0;
  return sum;
}

/** Tables behind their directory, in the order of their names. */
function sealed(tables: readonly (readonly [tag: string, bytes: Uint8Array])[]): Uint8Array {
  // Six tables: the largest power of two among them is four, which is two squared.
  const head = bytesOf(u32(0x10000), u16(tables.length), u16(64), u16(2), u16(32));
  let at = head.length + 16 * tables.length;
  const bodies = tables.map(([, bytes]) => padded(bytes));
  const entries = tables.map(([tag, bytes], k) => {
    const entry = bytesOf(
      ...Array.from(tag, (letter): [1, number] => [1, letter.charCodeAt(0)]),
      u32(checksum(bodies[k])),
      u32(at),
      u32(bytes.length),
    );
    at += bodies[k].length;
    return entry;
  });
  return joined([head, ...entries, ...bodies]);
}
