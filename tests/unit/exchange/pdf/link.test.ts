import { decodePDFRawStream, PDFDict, PDFDocument, PDFName, PDFRawStream } from '@cantoo/pdf-lib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { beforeAll, expect, test } from 'vitest';
import { tapedSets } from '../../../../src/core/form/tape/tape';
import { nightOf } from '../../../../src/core/night/nightOf';
import { packingOf } from '../../../../src/core/night/packing/packingOf';
import { assembleReport } from '../../../../src/core/report/report';
import { fingerprintOf } from '../../../../src/exchange/fingerprint';
import { packLinkOf } from '../../../../src/exchange/pdf/link/packLink';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import { standingOf } from '../../../../src/exchange/pdf/standing';
import type { PackInput } from '../../../../src/exchange/pdf/types';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { readCode } from '../readCode';
import { asRead, type ReadPdf, readPdf } from './readPdf';

const roof = nightRoof(EVEN_NIGHT);
let input: PackInput;
let bytes: Uint8Array;
let read: ReadPdf;

beforeAll(async () => {
  const night = nightOf(roof);
  input = {
    plan: roof,
    report: assembleReport(roof, []),
    night,
    packing: packingOf(roof, night),
    ground: { why: 'Not asked for.' },
    standing: standingOf(roof, 'm'),
    link: packLinkOf(roof, 'https://standclear.example/'),
    fingerprint: fingerprintOf(roof),
    paper: 'a4',
    lengths: 'm',
  };
  ({ bytes } = await packPdf(input));
  read = await readPdf(bytes);
}, 300_000);

/** Dark squares of the code that a page draws, as rectangles of a box of 1 by 1 from the lower left. */
function squaresOn(page: ReturnType<PDFDocument['getPage']>, size: number): Set<string> {
  const drawn = page.node.Resources()?.lookup(PDFName.of('XObject'), PDFDict);
  const [name] = drawn?.keys().filter((key) => key.decodeText().startsWith('Code')) ?? [];
  const stream = name && drawn?.lookup(name);
  if (!(stream instanceof PDFRawStream)) return new Set();
  const text = new TextDecoder().decode(decodePDFRawStream(stream).decode());
  const dark = new Set<string>();
  for (const [, left, top, right] of text.matchAll(/([\d.]+) ([\d.]+) m\s+([\d.]+) [\d.]+ l/g))
    for (let x = Math.round(Number(left) * size); x < Math.round(Number(right) * size); x += 1)
      dark.add(`${x} ${Math.round((1 - Number(top)) * size)}`);
  return dark;
}

test('every page has the link behind its words and its code, and the code is the link', async () => {
  const { address } = input.link ?? { address: '' };
  const size = input.link?.code?.size ?? 0;
  const document = await PDFDocument.load(bytes);
  for (const page of document.getPages()) {
    const dark = squaresOn(page, size);
    expect(readCode(size, (x, y) => dark.has(`${x} ${y}`))).toBe(address);
  }
  const reader = await getDocument({ data: Uint8Array.from(bytes), verbosity: 0 }).promise;
  for (let number = 1; number <= reader.numPages; number += 1) {
    const annotations = await (await reader.getPage(number)).getAnnotations();
    const urls: unknown[] = annotations.map(({ unsafeUrl }) => unsafeUrl);
    expect(urls.length).toBeGreaterThan(0);
    for (const url of urls) expect(url).toBe(address);
  }
  const outline = await reader.getOutline();
  expect(outline.map(({ title }) => title)).toContain('Where things stand');
  expect(outline.find(({ title }) => title === 'Setups')?.items).toHaveLength(roof.setups.length);
  await reader.destroy();
  expect(read.pages[0].text.replaceAll(' ', '')).toContain(address);
  for (const { text } of read.pages.slice(1)) expect(text).toContain(`Plan ${asRead(input.fingerprint)}.`);
});

test('words go beside the code where a page is full, and none over it or nearer than four of its squares', async () => {
  const { plan } = input;
  const notes = Array.from({ length: 90 }, (_, k) => `Line ${k} of what is said of this roof.`).join('\n');
  const full = await packPdf({ ...input, plan: { ...plan, notes } });
  const reader = await getDocument({ data: Uint8Array.from(full.bytes), verbosity: 0 }).promise;
  const free = (4 * 0.00025 * 72) / 0.0254;
  let beside = 0;
  for (let number = 2; number <= reader.numPages; number += 1) {
    const page = await reader.getPage(number);
    const boxes = (await page.getAnnotations()).map(({ rect }): number[] => Array.from(rect));
    const [left, bottom, right, top] =
      boxes.find(([x1, y1, x2, y2]) => Math.abs(x2 - x1 - (y2 - y1)) < 0.1) ?? [];
    expect(right).toBeGreaterThan(left);
    const { items } = await page.getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '') continue;
      const [, , , , x, y] = item.transform;
      const isApart =
        x + item.width <= left - free ||
        x >= right + free ||
        y >= top + free ||
        y + item.height <= bottom - free;
      expect(isApart, `page ${number}: ${item.str}`).toBe(true);
      // Above the words of the link itself.
      if (x < left && y < top && y > bottom + 40) beside += 1;
    }
  }
  await reader.destroy();
  expect(beside).toBeGreaterThan(3);
});

test('every stand has its two distances, worked out anew from where it stands', () => {
  const text = read.pages
    .filter((page) => page.text.includes(' Where things stand Page '))
    .map((page) => page.text)
    .join(' ');
  const stands = roof.gear.filter((each) => each.kind === 'stand');
  expect(stands.length).toBeGreaterThan(0);
  for (const stand of stands) {
    const [set] = tapedSets(roof, stand.id);
    expect(text).toContain(stand.label);
    for (const { from, fromLabel } of set.tapes) {
      const metres = Math.hypot(from.x - stand.at[0], from.z - stand.at[2]);
      expect(text.replaceAll(' ', '')).toContain(
        `${metres.toFixed(2)} m from ${fromLabel}`.replaceAll(' ', '').slice(0, 14),
      );
    }
  }
});

test('where the link is too long for a code, that is said, with what the plan is known by', async () => {
  const address = `https://standclear.example/#1${'a'.repeat(5000)}`;
  const long = await packPdf({ ...input, link: { address, code: null, leftOut: [] } });
  const { pages } = await readPdf(long.bytes);
  for (const { text } of pages)
    expect(text).toContain('The link has 5029 characters, too many for one code.');
  for (const { text } of pages) expect(asRead(text)).toContain(asRead(input.fingerprint));
});

test('a long link that leaves many files out stays on its page, and says how many more there are', async () => {
  const address = `https://standclear.example/#1${'a'.repeat(3900)}`;
  const leftOut = Array.from({ length: 90 }, (_, k) => `The file ${k} is not in the link.`);
  const long = await packPdf({ ...input, link: { address, code: null, leftOut } });
  const reader = await getDocument({ data: Uint8Array.from(long.bytes), verbosity: 0 }).promise;
  let letters = 0;
  for (const number of [1, 2]) {
    const { items } = await (await reader.getPage(number)).getTextContent();
    for (const item of items) {
      if (!('str' in item)) continue;
      const printed = item.str.match(/a{20,}/)?.[0].length ?? 0;
      // Above the foot, whose line of words stands at 38 points.
      if (printed > 0) expect(item.transform[5], item.str).toBeGreaterThan(45);
      letters += printed;
    }
  }
  await reader.destroy();
  expect(letters).toBeGreaterThan(3800);
  const { pages } = await readPdf(long.bytes);
  expect(asRead(pages.map(({ text }) => text).join(' '))).toContain(asRead('It leaves out 87 more files.'));
});
