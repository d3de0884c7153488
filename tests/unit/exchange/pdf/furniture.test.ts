import { PDFArray, PDFDict, PDFDocument, PDFName, PDFRef } from '@cantoo/pdf-lib';
import { describe, expect, test } from 'vitest';
import { nightOf } from '../../../../src/core/night/nightOf';
import { packingOf } from '../../../../src/core/night/packing/packingOf';
import { assembleReport } from '../../../../src/core/report/report';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { readPdf } from './readPdf';

/** The pack of the small roof without its setups, true north so far clockwise from the top of the sheet. */
async function packTurned(northDegrees: number): Promise<Uint8Array> {
  const plan = { ...nightRoof(EVEN_NIGHT, { northDegrees }), setups: [] };
  const night = nightOf(plan);
  const { bytes } = await packPdf({
    plan,
    report: assembleReport(plan, []),
    night,
    packing: packingOf(plan, night),
    ground: { why: 'Not asked for.' },
    standing: [],
    link: null,
    fingerprint: '',
    paper: 'a4',
    lengths: 'm',
  });
  return bytes;
}

async function overheadOf(bytes: Uint8Array) {
  const page = (await readPdf(bytes)).pages.find(({ text }) => text.includes('Overhead, 1:'));
  if (!page) throw new Error('there is no page of the overhead');
  const sized = page.paths.map(([left, bottom, right, top]) => ({
    left,
    bottom,
    wide: right - left,
    high: top - bottom,
    middle: [(left + right) / 2, (bottom + top) / 2] as const,
  }));
  return { page, sized };
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < 0.05;

describe('on the sheet of the overhead', () => {
  test('a bar of five parts is as long as the metres beside it by the scale of the sheet', async () => {
    const { page, sized } = await overheadOf(await packTurned(0));
    const [, scale, metres] = /Scale 1:(\d+) 0 ([\d.]+) m/.exec(page.text) ?? [];
    // 72 points an inch, 0.0254 m an inch.
    const long = (Number(metres) / Number(scale) / 0.0254) * 72;
    const scaled = page.pieces.find(({ text }) => text.startsWith('Scale'));
    const x = scaled?.at[0] ?? Number.NaN;
    const parts = Array.from({ length: 5 }, (_, k) =>
      sized.filter(
        ({ left, wide, high }) => near(left, x + (long * k) / 5) && near(wide, long / 5) && near(high, 4),
      ),
    );
    expect(parts.map((found) => found.length)).toEqual([1, 1, 1, 1, 1]);
    expect(new Set(parts.map(([{ bottom }]) => bottom.toFixed(2))).size).toBe(1);
    expect(long).toBeGreaterThan(30);
  });

  test.each([0, 90, 40, -120])(
    'an arrow turned by %i degrees points north, with its letter beyond its tip',
    async (degrees) => {
      const { page, sized } = await overheadOf(await packTurned(degrees));
      const turn = (degrees * Math.PI) / 180;
      // Its tip, barbs and notch about its middle, clockwise from the top of the sheet.
      const corners = [
        [14, 0],
        [-10, 5],
        [-6, 0],
        [-10, -5],
      ].map(([along, across]) => [
        along * Math.sin(turn) + across * Math.cos(turn),
        along * Math.cos(turn) - across * Math.sin(turn),
      ]);
      const [xs, ys] = [0, 1].map((axis) => corners.map((corner) => corner[axis]));
      const letter = page.pieces.filter(({ text }) => text === 'N').at(-1);
      if (!letter) throw new Error('there is no N');
      const arrows = sized.filter(
        ({ wide, high, left, bottom }) =>
          near(wide, Math.max(...xs) - Math.min(...xs)) &&
          near(high, Math.max(...ys) - Math.min(...ys)) &&
          // The letter stands 21 points from its middle, and is some 6 points wide and high.
          Math.abs(left - Math.min(...xs) + 21 * Math.sin(turn) - letter.at[0]) < 6 &&
          Math.abs(bottom - Math.min(...ys) + 21 * Math.cos(turn) - letter.at[1]) < 6,
      );
      expect(arrows).toHaveLength(1);
    },
  );
});

test('every font of the file is in it, and none is left to the reader', async () => {
  const document = await PDFDocument.load(await packTurned(0));
  const { context } = document;
  const dictOf = (value: unknown): PDFDict | null => {
    const found = value instanceof PDFRef ? context.lookup(value) : value;
    return found instanceof PDFDict ? found : null;
  };
  const fonts = context.enumerateIndirectObjects().flatMap(([, object]) => {
    const dict = dictOf(object);
    return dict?.get(PDFName.of('Type')) === PDFName.of('Font') ? [dict] : [];
  });
  const whole = fonts.filter((font) => !/^\/CIDFont/.test(String(font.get(PDFName.of('Subtype')))));
  expect(whole.length).toBeGreaterThanOrEqual(2);
  for (const font of whole) {
    const name = String(font.get(PDFName.of('BaseFont')));
    const below = font.get(PDFName.of('DescendantFonts'));
    const list = below instanceof PDFRef ? context.lookup(below) : below;
    const own = list instanceof PDFArray ? dictOf(list.get(0)) : font;
    const descriptor = dictOf(own?.get(PDFName.of('FontDescriptor')));
    const files = ['FontFile', 'FontFile2', 'FontFile3'].filter((key) => descriptor?.get(PDFName.of(key)));
    expect(files, name).toHaveLength(1);
  }
});
