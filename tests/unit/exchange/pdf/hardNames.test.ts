import { beforeAll, expect, test } from 'vitest';
import { FONT_SHELF } from '../../../../src/cli/fontShelf';
import { nightOf } from '../../../../src/core/night/nightOf';
import { packingOf } from '../../../../src/core/night/packing/packingOf';
import { withNames } from '../../../../src/core/plan/withNames';
import { assembleReport } from '../../../../src/core/report/report';
import { packPdf } from '../../../../src/exchange/pdf/pack';
import { type Standing, standingOf } from '../../../../src/exchange/pdf/standing';
import { HARD_NAMES, hardNamed } from '../../../plans/longNames';
import { EVEN_NIGHT, nightRoof } from '../../../plans/nightRoof';
import { type ReadPdf, readPdf } from './readPdf';

/** What a page keeps free all round, points, and what a reader's widths may be off by. */
const EDGE = 40;
const OFF = 0.5;

/** Letters alone: readers put spaces between pieces as they see gaps, and write some letters in parts. */
const letters = (text: string): string => text.normalize('NFC').replaceAll(/[\s\u2068\u2069]+/g, '');
const [long, oneWord, arabic, hebrew, bothWays, short, pictures, marked, ...unseen] = HARD_NAMES;

const wordsOf = (name: string): readonly string[] => name.match(/[\p{L}\p{M}\d]+/gu) ?? [];
const sorted = (text: string): string => [...text].sort().join('');
/** Whether the letters of a word stand together in a text, in whatever order. */
const hasLetters = (text: string, word: string): boolean =>
  Array.from(text, (_, k) => text.slice(k, k + word.length)).some((each) => sorted(each) === sorted(word));

let read: ReadPdf;
let notes: readonly string[];

// Every hard name in every table, without a look through a lens.
beforeAll(async () => {
  const roof = hardNamed(nightRoof(EVEN_NIGHT));
  const plan = { ...roof, notes: HARD_NAMES.join('\n') };
  const told = withNames(plan);
  const night = nightOf(told);
  const pack = await packPdf(
    {
      plan,
      report: assembleReport(told, []),
      night,
      packing: packingOf(told, night),
      ground: { why: 'Not asked for.' },
      standing: [
        ...standingOf(told, 'm'),
        ...HARD_NAMES.map(
          (label, k): Standing => ({
            id: `thing-${k}`,
            label,
            height: '2.00 m',
            aim: '',
            carries: HARD_NAMES.slice(0, 2),
            places: [
              {
                to: label,
                level: '0.00 m',
                tapes: [`2.00 m from ${label}`, `3.00 m from ${label}`],
                side: '',
              },
            ],
          }),
        ),
      ],
      link: null,
      fingerprint: '',
      paper: 'a4',
      lengths: 'm',
    },
    FONT_SHELF,
  );
  notes = pack.notes;
  read = await readPdf(pack.bytes);
}, 300_000);

test('the hardest names are in the pack letter by letter, or as what the fonts can show of them', () => {
  const text = letters(read.pages.map((page) => page.text).join(' '));
  for (const word of [long, oneWord, hebrew, bothWays, marked].flatMap(wordsOf))
    expect(text).toContain(letters(word));
  // The reader turns round the letters of what is drawn as one.
  for (const word of [arabic, short].flatMap(wordsOf)) expect(hasLetters(text, word)).toBe(true);
  // A picture of several characters is one letter, and one question mark.
  const count = [...new Intl.Segmenter().segment(pictures)].length;
  expect(text).toMatch(new RegExp(`(?<!\\?)\\?{${count}}(?!\\?)`));
  expect(notes).toEqual([
    '3 letters are in no font of the pack and printed as a question mark: U+1F3F3, U+1F468, U+1F469.',
  ]);
  expect(unseen).toHaveLength(2);
  for (const name of unseen) expect(text).not.toContain(name);
});

test('a thing without a name that can be seen goes by what it is', () => {
  const plan = withNames(hardNamed(nightRoof(EVEN_NIGHT)));
  const labels = [...plan.gear, ...plan.cast, ...plan.beats].map(({ label }) => label);
  expect(labels.filter((label) => label === 'beat').length).toBeGreaterThan(0);
  expect(read.pages.some(({ text }) => text.includes('mark, beat'))).toBe(true);
});

test('a date behind a name from right to left stays as it is', () => {
  const [cover] = read.pages;
  // In the head of the page, and behind the place.
  expect(cover.pieces.filter(({ text }) => letters(text) === '2026-11-20')).toHaveLength(2);
});

test('no name runs out of its page or into the next column', () => {
  const faults = read.pages.flatMap(({ width, pieces }, page) =>
    pieces.flatMap((piece, k) => {
      const [x, y] = piece.at;
      const end = x + piece.width;
      const isOut = x < EDGE - OFF || end > width - EDGE + OFF;
      const over = pieces
        .slice(k + 1)
        .filter(
          ({ at, width: wide }) =>
            Math.abs(at[1] - y) < 3 && Math.min(end, at[0] + wide) - Math.max(x, at[0]) > 1,
        );
      return [
        ...(isOut ? [`page ${page + 1}: ${piece.text} from ${x} to ${end}`] : []),
        ...over.map(({ text }) => `page ${page + 1}: ${piece.text} over ${text}`),
      ];
    }),
  );
  expect(faults).toEqual([]);
});
