import { describe, expect, test } from 'vitest';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Opening, Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { roofNotices } from '../../../src/core/report/roofNotices';
import { DEMO, readPlan } from '../../plans/readPlan';
import { smallRoof } from '../smallRoof';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const sentences = (plan: Plan): string[] => roofNotices(plan).map(({ sentence }) => plain(sentence));
const withPieces = (...pieces: Piece[]): Plan => ({ ...smallRoof(), gear: [], pieces });
const withGear = (gear: Gear, pieces: readonly Piece[] = smallRoof().pieces): Plan => ({
  ...smallRoof(),
  pieces: [...pieces],
  gear: [gear],
});

const WALL: Extract<Piece, { kind: 'wall' }> = {
  id: 'wall',
  label: 'Party wall',
  kind: 'wall',
  path: [
    [0, 0],
    [4, 0],
    [4, 4],
  ],
  closed: false,
  baseMetres: 0,
  heightMetres: 2.5,
  thicknessMetres: 0.2,
  material: 'brick',
};
const opening = (alongMetres: number, widthMetres: number, sillMetres = 0): Opening => ({
  id: 'o',
  alongMetres,
  widthMetres,
  sillMetres,
  heightMetres: 2,
});
const STAND: Extract<Gear, { kind: 'stand' }> = {
  id: 's',
  label: 'Lamp stand 1',
  kind: 'stand',
  stand: 'tall',
  at: [0, 0, 0],
  headingDegrees: 0,
  heightMetres: 2.6,
};
const DECK = smallRoof().pieces.find((piece) => piece.kind === 'deck');
if (DECK?.kind !== 'deck') throw new Error('The small roof has no deck.');
const WELL: [number, number][] = [
  [2, 2],
  [4, 2],
  [4, 4],
  [2, 4],
];

test('a roof without any of it has nothing to say', () => {
  expect(roofNotices(smallRoof())).toEqual([]);
  expect(roofNotices(readPlan(DEMO))).toEqual([]);
});

describe('openings', () => {
  test.each([
    [opening(2, 0.9), []],
    [
      opening(3.9, 0.9),
      [
        'The opening 3.90 m along Party wall reaches over a corner or an end, and is drawn where it fits. Move it or make it narrower.',
      ],
    ],
    [
      opening(2, 5),
      [
        'The opening 2.00 m along Party wall reaches over a corner or an end, and is drawn where it fits. Move it or make it narrower.',
      ],
    ],
    [
      opening(30, 0.9),
      [
        'The opening 30.00 m along Party wall reaches over a corner or an end, and is drawn where it fits. Move it or make it narrower.',
      ],
    ],
    [
      opening(2, 0.9, 2.5),
      ['The opening 2.00 m along Party wall has no room there and is left out. Move it or make it smaller.'],
    ],
  ])('%j', (cut, expected) => {
    expect(sentences(withPieces(DECK, { ...WALL, openings: [cut] }))).toEqual(expected);
  });
});

test('holes that cannot be cut', () => {
  const holes = (...outlines: [number, number][][]) =>
    withPieces({ ...DECK, holes: outlines.map((outline, k) => ({ id: `h${k}`, outline })) });
  expect(sentences(holes(WELL))).toEqual([]);
  const over = WELL.map(([x, z]): [number, number] => [x + 7, z]);
  expect(sentences(holes(WELL, over, WELL))).toEqual([
    '2 holes of Deck cannot be cut: each has to lie inside the deck, clear of its edge and of other holes.',
  ]);
});

describe('stands', () => {
  test.each([
    [{}, []],
    [{ heightMetres: 4.5 }, ['Lamp stand 1 is set to 4.50 m, but its class, Tall stand, goes up to 4.00 m.']],
    [{ heightMetres: 1 }, ['Lamp stand 1 is set to 1.00 m, but its class, Tall stand, goes down to 1.20 m.']],
    [{ spreadMetres: 0.8 }, []],
    [
      { spreadMetres: 1.4 },
      ['The legs of Lamp stand 1 stand 1.40 m across, but its class, Tall stand, opens to 1.10 m.'],
    ],
    [
      { at: [0, 0, -7.8] },
      ['A foot of Lamp stand 1 is over the edge of Deck. Move it, or draw its legs in.'],
    ],
    [{ at: [0, 0, -7.8], spreadMetres: 0.3 }, []],
    [
      { at: [0, 0, 7.9] },
      ['2 feet of Lamp stand 1 are over the edge of Deck. Move it, or draw its legs in.'],
    ],
    [{ at: [0, 0.4, 0] }, ['Lamp stand 1 hangs 0.40 m above Deck. Set it down.']],
    [{ at: [12, 0, 0] }, ['Lamp stand 1 stands on nothing, beside the deck. Move it on to the deck.']],
  ] as [Partial<typeof STAND>, string[]][])('%j', (change, expected) => {
    expect(sentences(withGear({ ...STAND, ...change }))).toEqual(expected);
  });

  test('over a hole, with a foot or wholly', () => {
    const holed: Piece[] = [{ ...DECK, holes: [{ id: 'well', outline: WELL }] }];
    expect(sentences(withGear({ ...STAND, at: [3, 0, 4.3] }, holed))).toEqual([
      'A foot of Lamp stand 1 is over a hole in Deck. Move it, or draw its legs in.',
    ]);
    expect(sentences(withGear({ ...STAND, at: [3, 0, 3] }, holed))).toEqual([
      'Lamp stand 1 stands over a hole in Deck. Move it.',
    ]);
  });

  test('on a riser stand on it as long as their feet do', () => {
    const riser: Piece = {
      id: 'r',
      label: 'Riser',
      kind: 'riser',
      at: [0, 0, 0],
      headingDegrees: 0,
      size: [2, 0.4, 1],
    };
    const on = { ...STAND, at: [0, 0.4, 0] as [number, number, number] };
    expect(sentences(withGear(on, [DECK, riser]))).toEqual([
      'A foot of Lamp stand 1 is over the edge of Riser. Move it, or draw its legs in.',
    ]);
    expect(sentences(withGear({ ...on, spreadMetres: 0.9 }, [DECK, riser]))).toEqual([]);
  });

  test('on a plan without a deck stand at zero', () => {
    expect(sentences(withGear(STAND, []))).toEqual([]);
  });
});
