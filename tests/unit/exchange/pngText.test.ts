import { crc32 as theirs } from 'node:zlib';
import { PNG } from 'pngjs';
import { expect, test } from 'vitest';
import { crc32 } from '../../../src/exchange/crc32';
import { withPngTexts } from '../../../src/exchange/pngText';
import { textsOf } from '../../plans/pngTexts';

function picture(): Buffer {
  const png = new PNG({ width: 5, height: 3 });
  for (let k = 0; k < png.data.length; k += 1) png.data[k] = (k * 37) % 256;
  return PNG.sync.write(png);
}

test('the check of a chunk is the one that zlib computes', () => {
  const bytes = Uint8Array.from({ length: 1000 }, (_, k) => (k * 31) % 256);
  expect(crc32(bytes)).toBe(theirs(bytes));
  expect(crc32(new Uint8Array(0))).toBe(0);
});

test('a reader finds the same pixels, and the fields', () => {
  const plain = picture();
  const texts = {
    Setup: 'A Wide, both',
    Lens: '50\u00a0mm, 2× squeeze',
    Height: '3′\u00a011¼″ high',
    Stop: 'T2.8',
  };
  const bytes = Buffer.from(withPngTexts(plain, texts));
  expect(PNG.sync.read(bytes).data).toEqual(PNG.sync.read(plain).data);
  expect(textsOf(bytes)).toEqual(texts);
  // What Latin-1 cannot say is written in UTF-8.
  expect(bytes.includes('iTXtHeight')).toBe(true);
  expect(bytes.includes('tEXtStop')).toBe(true);
});

test('a spoilt chunk would have been found', () => {
  const bytes = Buffer.from(withPngTexts(picture(), { Stop: 'T2.8' }));
  bytes[bytes.indexOf('T2.8') + 1] += 1;
  expect(() => textsOf(bytes)).toThrow('the check of tEXt');
});

test('what is no PNG, and keywords that PNG does not allow, are refused', () => {
  expect(() => withPngTexts(new Uint8Array(20), {})).toThrow('do not begin as a PNG does');
  for (const keyword of ['', 'x'.repeat(80), 'Höhe ′'])
    expect(() => withPngTexts(picture(), { [keyword]: 'x' })).toThrow('expected 1 to 79 letters');
});
