import { expect, test } from 'vitest';
import { FONT_SHELF } from '../../../../src/cli/fontShelf';
import { nightOf } from '../../../../src/core/night/nightOf';
import { packingOf } from '../../../../src/core/night/packing/packingOf';
import { assembleReport } from '../../../../src/core/report/report';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import type { PackInput } from '../../../../src/exchange/pdf/types';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { readPdf } from './readPdf';

/** Names as crews write them, each in its own script: a roof, a lamp, a camera. */
const NAMES = {
  Arabic: 'سطح المدينة',
  Hebrew: 'מצלמה על הגג',
  Japanese: '屋上のカメラ',
  Korean: '옥상 조명',
  Thai: 'กล้องที่หนึ่ง',
  Hindi: 'हिन्दी क्षत्रिय छत',
  Bengali: 'ছাদের বাতি',
  Tamil: 'கூரை விளக்கு',
  Gujarati: 'છત પર દીવો',
  Punjabi: 'ਛੱਤ ਦਾ ਦੀਵਾ',
  Amharic: 'ጣሪያ መብራት',
  Armenian: 'Տանիքի լույս',
  Georgian: 'სახურავის ნათურა',
} as const;

/** A pack of what is told without looking through a lens. */
function inputNamed(title: string, labels: readonly string[]): PackInput {
  const roof = nightRoof(EVEN_NIGHT);
  const plan = { ...roof, title, notes: labels.join('\n'), setups: [] };
  const night = nightOf(plan);
  return {
    plan,
    report: assembleReport(plan, []),
    night,
    packing: packingOf(plan, night),
    ground: { why: 'Not asked for.' },
    standing: labels.map((label, k) => ({
      id: `thing-${k}`,
      label,
      height: '',
      aim: '',
      carries: [],
      places: [{ to: 'the column', level: '0.00 m', tapes: [`2.00 m from ${label}`, '3.00 m'], side: '' }],
    })),
    link: null,
    fingerprint: '',
    paper: 'a4',
    lengths: 'm',
  };
}

/** Letters alone: readers put spaces between pieces as they see gaps. */
const close = (text: string): string => text.normalize('NFC').replaceAll(/\s+/g, '');

test('names in other scripts are found in the pack, letter by letter', async () => {
  const names = Object.values(NAMES);
  const { bytes, notes } = await packPdf(inputNamed(NAMES.Arabic, names), FONT_SHELF);
  expect(notes).toEqual([]);
  const { pages, title } = await readPdf(bytes);
  expect(title).toBe(NAMES.Arabic);
  const read = close(pages.map(({ text }) => text).join(' '));
  for (const [script, name] of Object.entries(NAMES))
    for (const word of name.split(' ')) expect(read, script).toContain(close(word));
});

test('a font is in the file only as far as names need it, and what none has is told', async () => {
  const plain = await packPdf(inputNamed('Roof', []), FONT_SHELF);
  expect(Buffer.from(plain.bytes).includes('PackScripts')).toBe(false);
  const { bytes, notes } = await packPdf(inputNamed('屋上 𓀀', []), FONT_SHELF);
  expect(bytes.length - plain.bytes.length).toBeLessThan(8_000);
  expect(notes).toEqual(['One letter is in no font of the pack and printed as a question mark: U+13000.']);
});

test('without its fonts at hand a pack is written all the same', async () => {
  const away = {
    slices: () => Promise.reject(new Error('no signal')),
    file: () => Promise.reject(new Error()),
  };
  const { notes } = await packPdf(inputNamed('屋上', []), away);
  expect(notes).toEqual([
    '2 letters are in no font of the pack and printed as a question mark: U+4E0A, U+5C4B.',
  ]);
});
