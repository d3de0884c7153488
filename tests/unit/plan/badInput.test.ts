import { describe, expect, test } from 'vitest';
import { parsePlanText } from '../../../src/core/plan/parse';
import { spoilt, spoiltBy } from './spoilt';

const DEEP = 100_000;
const nested = '['.repeat(DEEP) + ']'.repeat(DEEP);

const NO_OBJECT = 'expected an object that starts with {"standclear": 1.';
const ANY_KIND =
  'a kind of set piece: deck, parapet, wall, fence, stair house, shed, tank, post, line, chimney, box, riser, pane, chart, skyline block or model';

type Row = readonly [what: string, text: string, ...sentences: string[]];

const FILES: readonly Row[] = [
  ['nothing', '', 'The file: found nothing at all, expected a plan in JSON.'],
  ['blanks', ' \n\t\n', 'The file: found nothing but blanks, expected a plan in JSON.'],
  [
    'a picture',
    '\ufffdPNG\r\n\u001a\n\u0000',
    'The file: found something that is not text, expected a plan in JSON.',
  ],
  ['a list in a list in a list', nested, `The plan: found a list of 1, ${NO_OBJECT}`],
  [
    'an object in an object in an object',
    `${'{"a":'.repeat(DEEP)}1${'}'.repeat(DEEP)}`,
    'standclear: found nothing, expected the version of the plan, 1.',
  ],
  ['a text', '"standclear"', `The plan: found "standclear", ${NO_OBJECT}`],
  [
    'no version',
    spoilt({ standclear: undefined }),
    'standclear: found nothing, expected the version of the plan, 1.',
  ],
  [
    'a version in words',
    spoilt({ standclear: 'one' }),
    'standclear: found "one", expected the version of the plan, 1.',
  ],
  ['version 0', spoilt({ standclear: 0 }), 'standclear: found 0, expected the version of the plan, 1.'],
  [
    'a newer version',
    spoilt({ standclear: 2 }),
    'standclear: found version 2, expected at most 1: this plan comes from a newer Standclear, open it there.',
  ],
];

const FIELDS: readonly Row[] = [
  ['notes that go deep', spoiltBy('notes', nested), 'notes: found a list of 1, expected a text.'],
  [
    'set pieces that go deep',
    spoiltBy('pieces', nested),
    `pieces[0].kind: found nothing, expected ${ANY_KIND}.`,
  ],
  [
    'a number of 308 places',
    spoilt({ 'pieces.0.topMetres': 1e308 }),
    'pieces[0].topMetres of "Deck": found 1e+308, expected -5000 to 5000 metres.',
  ],
  [
    'a number beyond all numbers',
    spoiltBy('pieces.0.topMetres', '1e999'),
    'pieces[0].topMetres of "Deck": found Infinity, expected a finite number.',
  ],
  [
    'a stand of negative height',
    spoilt({ 'gear.0.heightMetres': -1 }),
    'gear[0].heightMetres of "Lamp stand 1": found -1, expected 0.001 to 500 metres.',
  ],
  [
    'a lens of 0 mm',
    spoilt({ 'kit.lenses.0.focalMm': 0 }),
    'kit.lenses[0].focalMm of "40 mm, 2x anamorphic": found 0, expected 1 to 3000 mm.',
  ],
  [
    'a lens of 5,000 mm',
    spoilt({ 'kit.lenses.0.focalMm': 5000 }),
    'kit.lenses[0].focalMm of "40 mm, 2x anamorphic": found 5000, expected 1 to 3000 mm.',
  ],
  [
    'a lens that squeezes to nothing',
    spoilt({ 'kit.lenses.0.squeeze': 0 }),
    'kit.lenses[0].squeeze of "40 mm, 2x anamorphic": found 0, expected 1 to 3 times.',
  ],
  [
    'a gate without width',
    spoilt({ 'kit.bodies.0.modes.0.gateMm': [0, 18] }),
    'kit.bodies[0].modes[0].gateMm[0] of "Full": found 0, expected 1 to 200 mm.',
  ],
  [
    'an aspect of 0.1',
    spoilt({ 'setups.0.delivery': 0.1 }),
    'setups[0].delivery of "Master from the stairs": found 0.1, expected 0.2 to 5.',
  ],
  [
    'an ISO of 0',
    spoilt({ 'setups.0.iso': 0 }),
    'setups[0].iso of "Master from the stairs": found 0, expected 1 to 1000000.',
  ],
  [
    'a time before the action',
    spoilt({ 'beats.0.atSeconds': -1 }),
    'beats[0].atSeconds of "Start": found -1, expected 0 to 3600 seconds.',
  ],
  [
    'a date that no calendar has',
    spoilt({ 'place.date': 'tomorrow' }),
    'place.date of "Somewhere": found "tomorrow", expected a date such as 2026-11-20.',
  ],
  [
    'a setup without camera keys',
    spoilt({ 'setups.0.move.keys': [] }),
    'setups[0].move.keys of "Master from the stairs": found a list of 0, expected at least one camera key.',
  ],
  [
    'a fence of one corner',
    spoilt({ 'pieces.1.path': [[0, 0]] }),
    'pieces[1].path of "Fence": found a list of 1, expected at least two corners.',
  ],
  [
    'an id with a colon, which in an exported scene parts item from part',
    spoilt({ 'gear.0.id': 'a:b' }),
    'gear[0].id of "Lamp stand 1": found "a:b", expected an id of 1 to 40 letters, digits and hyphens, with no hyphen at its ends.',
  ],
  [
    'wrong types everywhere',
    spoilt({ title: [], notes: {}, pieces: 7, cast: 'none', beats: null, gear: true, setups: {} }),
    'title: found a list of 0, expected a name.',
    'notes: found an object, expected a text.',
    'pieces: found 7, expected a list.',
    'beats: found null, expected a list.',
    'cast: found "none", expected a list.',
    'gear: found true, expected a list.',
    'setups: found an object, expected a list.',
  ],
];

const REFERENCES: readonly Row[] = [
  [
    'two items of one id',
    spoilt({ 'gear.1.id': 'fence' }),
    'Item "Backlight": found the id "fence", which "Fence" has too, expected an id of its own.',
  ],
  [
    'two gate modes of one id',
    spoilt({ 'kit.bodies.0.modes.1': { id: 'full', label: 'Again', gateMm: [20, 10] } }),
    'Body "Large sensor", mode "Again": found the id "full", which "Full" has too, expected an id of its own.',
  ],
  [
    'a lens that is not in the kit',
    spoilt({ 'setups.0.lens': 'gone' }),
    `Setup "Master from the stairs", lens: found "gone", expected the id of a lens in the plan’s kit.`,
  ],
  [
    'a head on a stand that is not there',
    spoilt({ 'gear.1.place.on': 'gone' }),
    'Gear "Backlight", place.on: found "gone", expected the id of a stand.',
  ],
  [
    'a head on itself',
    spoilt({ 'gear.1.place.on': 'head-in' }),
    'Gear "Backlight", place.on: found "head-in", expected the id of a stand.',
  ],
  [
    'a mark at a beat that is not there',
    spoilt({ 'cast.0.marks.0.beat': 'gone' }),
    'Performer "Ana", mark "a1", beat: found "gone", expected the id of a beat.',
  ],
  [
    'a span that runs backwards',
    spoilt({ 'setups.0.span': { from: 'end', to: 'start' } }),
    'Setup "Master from the stairs", span: found an end at 0 s, before its start at 2 s, expected a span that ends after it starts.',
  ],
  [
    'camera keys out of order',
    spoilt({ 'setups.0.move.keys.0.atSeconds': 3 }),
    'Setup "Master from the stairs", move.keys[1].atSeconds: found 2, expected a moment after the key before it, at 3 s.',
  ],
  [
    'two camera keys at once',
    spoilt({ 'setups.0.move.keys.1.atSeconds': 0 }),
    'Setup "Master from the stairs", move.keys[1].atSeconds: found 0, expected a moment after the key before it, at 0 s.',
  ],
];

describe.each([
  ['a file', FILES],
  ['a field', FIELDS],
  ['a reference', REFERENCES],
])('%s', (_, rows) => {
  test.each(rows)(
    '%s is refused with one sentence for each thing that is wrong',
    (_what, text, ...sentences) => {
      const parsed = parsePlanText(text);
      expect(parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence)).toEqual(sentences);
    },
  );
});

test.each([
  ['words', 'Bring the long cable.'],
  ['half a plan', spoilt({}).slice(0, 700)],
  ['a number that is none', spoiltBy('pieces.0.topMetres', 'NaN')],
  ['a comma too many', '{"standclear": 1,}'],
])('%s: refused with what the engine says of it', (_, text) => {
  const parsed = parsePlanText(text);
  const sentences = parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
  expect(sentences).toHaveLength(1);
  expect(sentences[0]).toMatch(
    /^The file: found something that is not JSON \(.+\), expected a plan in JSON\.$/,
  );
});
