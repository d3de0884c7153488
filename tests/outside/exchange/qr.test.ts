import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { linkOfPlan } from '../../../src/exchange/link/link';
import { type QrSquares, qrOf } from '../../../src/exchange/link/qr';
import { qrSvg } from '../../../src/exchange/link/qrSvg';
import { DEMO, readPlan } from '../../plans/readPlan';

const MARGIN = 4;
const PIXELS = 3;

/** The code as a camera would have it, so many pixels a square, with the margin that readers need. */
function picture(isDark: QrSquares['isDark'], size: number) {
  const side = (size + 2 * MARGIN) * PIXELS;
  const data = new Uint8ClampedArray(side * side * 4).fill(255);
  for (let y = 0; y < side; y += 1)
    for (let x = 0; x < side; x += 1)
      if (isDark(Math.floor(x / PIXELS) - MARGIN, Math.floor(y / PIXELS) - MARGIN))
        data.fill(0, (y * side + x) * 4, (y * side + x) * 4 + 3);
  return { data, side };
}

/** What jsQR reads, a decoder that shares nothing with the encoder. */
function readBack(isDark: QrSquares['isDark'], size: number): string | undefined {
  const { data, side } = picture(isDark, size);
  return jsQR(data, side, side)?.data;
}

const link = `https://standclear.example/#${linkOfPlan(readPlan(DEMO)).fragment}`;

test.each([
  ['the demo plan', link],
  ['a short text', 'https://standclear.example/'],
  ['as much as one code holds', 'a'.repeat(2953)],
])('another reader gets %s out of its code', (_, text) => {
  const squares = qrOf(text);
  if (!squares) throw new Error('too long');
  expect(readBack(squares.isDark, squares.size)).toBe(text);
});

test('the file that is written shows the same code', () => {
  const squares = qrOf(link);
  if (!squares) throw new Error('too long');
  const dark = new Set(
    Array.from(qrSvg(squares).matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g)).flatMap(([, x, y, length]) =>
      Array.from({ length: Number(length) }, (_, k) => `${Number(x) + k} ${y}`),
    ),
  );
  const isDark = (x: number, y: number): boolean => dark.has(`${x + MARGIN} ${y + MARGIN}`);
  expect(readBack(isDark, squares.size)).toBe(link);
});

test('a short text bears more damage than a long one, and what is too long gives none', () => {
  const squares = qrOf('https://standclear.example/');
  if (!squares) throw new Error('too long');
  // A square of 4 by 4 in the middle, a tenth of all, under a thumb.
  const thumb = (x: number, y: number): boolean =>
    x > squares.size / 2 && x < squares.size / 2 + 5 && y > squares.size / 2 && y < squares.size / 2 + 5;
  expect(readBack((x, y) => thumb(x, y) || squares.isDark(x, y), squares.size)).toBe(
    'https://standclear.example/',
  );
  expect(qrOf('a'.repeat(2954))).toBeNull();
});
