import { expect, test } from 'vitest';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Setup } from '../../../src/core/plan/schema/setup';
import { DEMO, PAPER, readPlan } from '../../plans/readPlan';

const paper = readPlan(PAPER);
const demo = readPlan(DEMO);

function sentencesOf(plan: unknown): string[] {
  const parsed = parsePlan(plan);
  return parsed.ok ? [] : parsed.faults.map(({ sentence }) => sentence);
}

const withSetup = (change: Partial<Setup>): Plan => ({
  ...paper,
  setups: paper.setups.map((setup, k) => (k === 0 ? { ...setup, ...change } : setup)),
});

test('two items with one id, whatever their sections', () => {
  const [first, second, ...rest] = demo.pieces;
  expect(sentencesOf({ ...demo, pieces: [first, { ...second, id: 'nuno' }, ...rest] })).toEqual([
    'Item "Nuno": found the id "nuno", which "Parapet" has too, expected an id of its own.',
  ]);
});

test.each<[string, Plan, string]>([
  [
    'two setups',
    withSetup({ id: 'down' }),
    'Setup "Down at the floor": found the id "down", which "Level" has too, expected an id of its own.',
  ],
  [
    'two lenses',
    { ...paper, kit: { ...paper.kit, lenses: [...paper.kit.lenses, paper.kit.lenses[0]] } },
    'Lens "24 mm spherical": found the id "spherical", which "24 mm spherical" has too, expected an id of its own.',
  ],
  [
    'two beats',
    { ...paper, beats: [...paper.beats, { id: 'end', label: 'Later', atSeconds: 5 }] },
    'Beat "Later": found the id "end", which "End" has too, expected an id of its own.',
  ],
])('%s with one id', (_, plan, sentence) => expect(sentencesOf(plan)).toEqual([sentence]));

test.each<[string, Partial<Setup>, string]>([
  [
    'lens',
    { lens: 'gone' },
    `Setup "Level", lens: found "gone", expected the id of a lens in the plan’s kit.`,
  ],
  [
    'body',
    { body: 'gone' },
    `Setup "Level", body: found "gone", expected the id of a body in the plan’s kit.`,
  ],
  [
    'gate mode',
    { mode: 'gone' },
    'Setup "Level", mode: found "gone", expected the id of a gate mode of "Round numbers".',
  ],
  [
    'performer in focus',
    { focus: { follow: 'gone' } },
    'Setup "Level", focus.follow: found "gone", expected the id of a performer.',
  ],
  [
    'first beat',
    { span: { from: 'gone', to: 'end' } },
    'Setup "Level", span.from: found "gone", expected the id of a beat.',
  ],
  [
    'last beat',
    { span: { from: 'start', to: 'gone' } },
    'Setup "Level", span.to: found "gone", expected the id of a beat.',
  ],
])('a setup without its %s', (_, change, sentence) =>
  expect(sentencesOf(withSetup(change))).toEqual([sentence]),
);

test('a span that runs backwards', () => {
  expect(sentencesOf(withSetup({ span: { from: 'end', to: 'start' } }))).toEqual([
    'Setup "Level", span: found an end at 0 s, before its start at 4 s, expected a span that ends after it starts.',
  ]);
});

test('camera keys out of order', () => {
  const [key] = paper.setups[0].move.keys;
  expect(sentencesOf(withSetup({ move: { ease: 'linear', keys: [{ ...key, atSeconds: 2 }, key] } }))).toEqual(
    ['Setup "Level", move.keys[1].atSeconds: found 0, expected a moment after the key before it, at 2 s.'],
  );
});

test('gear that refers to what is not there', () => {
  const gear: Plan['gear'] = [
    { id: 'lamp', label: 'Lamp', kind: 'head', head: 'gone', place: { on: 'deck' }, aim: [0, 0, 0], dim: 1 },
    {
      id: 'stand',
      label: 'Stand',
      kind: 'stand',
      stand: 'gone',
      at: [0, 0, 0],
      headingDegrees: 0,
      heightMetres: 2,
    },
  ];
  expect(sentencesOf({ ...paper, gear })).toEqual([
    `Gear "Lamp", head: found "gone", expected the id of a head class in the plan’s kit.`,
    'Gear "Lamp", place.on: found "deck", expected the id of a stand.',
    `Gear "Stand", stand: found "gone", expected the id of a stand class in the plan’s kit.`,
  ]);
});

test('a mark at a beat that is not there, and two marks with one id', () => {
  const [nuno] = demo.cast;
  const [mark] = nuno.marks;
  const cast = [{ ...nuno, marks: [mark, { ...mark, beat: 'gone' }] }, ...demo.cast.slice(1)];
  expect(sentencesOf({ ...demo, cast })).toEqual([
    'Performer "Nuno", mark "n1": found the id "n1", which "n1" has too, expected an id of its own.',
    'Performer "Nuno", mark "n1", beat: found "gone", expected the id of a beat.',
  ]);
});

const cable = {
  id: 'lead',
  label: 'Lead',
  kind: 'cable',
  path: [
    [0, 0],
    [1, 0],
  ],
  baseMetres: 0,
  diameterMetres: 0.01,
};

test.each([
  ['gone', 'gear that is not there'],
  ['lead', 'itself'],
  ['nuno', 'somebody'],
])('a cable plugged into %s, %s', (to) => {
  expect(sentencesOf({ ...demo, gear: [...demo.gear, { ...cable, plugs: { from: 'distro', to } }] })).toEqual(
    [`Gear "Lead", plugs.to: found "${to}", expected the id of gear that is no cable.`],
  );
});

test('tapes, openings of a run and holes of a deck with one id', () => {
  const tape = { id: 'tape-1', from: [0, 0], to: [1, 0] };
  expect(sentencesOf({ ...demo, tapes: [tape, tape] })).toEqual([
    'Tape "tape-1": found the id "tape-1", which "tape-1" has too, expected an id of its own.',
  ]);
  const opening = { id: 'gate', alongMetres: 3, widthMetres: 1, sillMetres: 0, heightMetres: 0.9 };
  const hole = {
    id: 'well',
    outline: [
      [0, 0],
      [1, 0],
      [1, 1],
    ],
  };
  const [deck, parapet, ...rest] = demo.pieces;
  const pieces = [{ ...deck, holes: [hole, hole] }, { ...parapet, openings: [opening, opening] }, ...rest];
  expect(sentencesOf({ ...demo, pieces })).toEqual([
    'Set piece "Deck", hole "well": found the id "well", which "well" has too, expected an id of its own.',
    'Set piece "Parapet", opening "gate": found the id "gate", which "gate" has too, expected an id of its own.',
  ]);
});

test('plugs that lead somewhere, and ids that two things of different sorts share', () => {
  const tape = { id: 'distro', from: [0, 0], to: [1, 0] };
  const plugged = { ...cable, plugs: { from: 'distro', to: 'head-1' } };
  expect(sentencesOf({ ...demo, tapes: [tape], gear: [...demo.gear, plugged] })).toEqual([]);
});
