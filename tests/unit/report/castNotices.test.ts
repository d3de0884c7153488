import { describe, expect, test } from 'vitest';
import type { Mark } from '../../../src/core/plan/schema/cast';
import type { Spot } from '../../../src/core/plan/schema/numbers';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { blockingFaults, castNotices } from '../../../src/core/report/castNotices';
import { noticesOf } from '../../../src/core/report/notices';
import { reportOf } from '../../../src/core/report/report';
import { DEMO, readPlan } from '../../plans/readPlan';
import { sound, twoOnARoof } from '../plan/edits/blockingPlan';
import { smallRoof } from '../smallRoof';

const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const sentences = (plan: Plan): string[] => castNotices(sound(plan)).map(({ sentence }) => plain(sentence));

const square = (half: number): Spot[] => [
  [-half, -half],
  [half, -half],
  [half, half],
  [-half, half],
];
const DECK: Piece = {
  id: 'deck',
  label: 'Deck',
  kind: 'deck',
  outline: square(10),
  topMetres: 0,
  dropMetres: 9,
};
const run = { closed: false, baseMetres: 0, thicknessMetres: 0.2, material: 'brick' } as const;
const WALL: Piece = {
  ...run,
  id: 'wall',
  label: 'Party wall',
  kind: 'wall',
  path: [
    [2, -3],
    [2, 0.5],
  ],
  heightMetres: 3,
};

const mark = (id: string, beat: string, at: Spot, more: Partial<Mark> = {}): Mark => ({
  id,
  beat,
  at,
  headingDegrees: 0,
  stance: 'stand',
  holdSeconds: 0,
  ...more,
});

/** Abel's and Bea's marks on a deck; nothing else that could be said of them. */
function blocked(abel: Mark[], bea: Mark[], more: Partial<Plan> = {}): Plan {
  const { passes: _, lines: __, ...plan } = twoOnARoof();
  const [one, other] = plan.cast;
  return {
    ...plan,
    pieces: [DECK],
    cast: [
      { ...one, marks: abel },
      { ...other, marks: bea },
    ],
    setups: plan.setups.map(({ cheats: ___, ...setup }) => setup),
    ...more,
  };
}
const AWAY = [mark('b', 'begin', [-6, -6])];

test('of the demo nothing is said but that its parapet is lower than a guard', () => {
  // 0.95 m, where 42 inches less 3 are 0.99 m; he leans on it, 0.8 m from the edge of the deck.
  expect(sentences(readPlan(DEMO))).toEqual([
    'Rui stands at “Nuno at the loft with the bird” within 0.80 m of an edge of Deck without a guard of about 1.1 m. A warning line stands 1.8 m off; local code and a competent person decide.',
  ]);
});

test('what is well blocked is not spoken of, and what is not is among the notices of the report', () => {
  expect(sentences(blocked([mark('a', 'begin', [0, 0]), mark('c', 'end', [4, 0])], AWAY))).toEqual([]);
  const off = blocked([mark('a', 'begin', [0, 20])], AWAY);
  expect(noticesOf(off).map(({ sentence }) => sentence)).toContain(castNotices(off)[0].sentence);
});

describe('walks and marks', () => {
  test('a walk through a wall says how long the clear way is, and brings it', () => {
    const plan = blocked([mark('a', 'begin', [0, 0]), mark('c', 'end', [4, 0])], AWAY, {
      pieces: [DECK, WALL],
    });
    const [wrong, ...others] = blockingFaults(plan);
    expect(others).toEqual([]);
    // 0.1 m of wall and 0.25 m of shoulder before x = 2.
    expect(plain(wrong.sentence)).toMatch(
      /^The walk of Abel to “End” goes through Party wall after 1\.65 m\. A clear way round exists: 4\.\d\d m, 0\.\d\d m longer\.$/,
    );
    const mended = wrong.mend?.edit(plan);
    if (!mended) throw new Error('nothing mends it');
    expect(sentences(mended)).toEqual([]);
  });

  test('over a parapet out of a closed yard there is no clear way', () => {
    const yard: Piece = {
      ...run,
      id: 'y',
      label: 'Yard',
      kind: 'parapet',
      path: square(2),
      closed: true,
      heightMetres: 1.1,
      copingMetres: 0.05,
    };
    expect(
      sentences(
        blocked([mark('a', 'begin', [0, 0]), mark('c', 'end', [4, 0])], AWAY, { pieces: [DECK, yard] }),
      ),
    ).toEqual([
      'The walk of Abel to “End” goes over Yard after 1.65 m, and there is no clear way round. Move a mark, or make an opening.',
    ]);
  });

  test('marks off the deck and inside of things', () => {
    const plan = blocked([mark('a', 'begin', [0, 20])], [mark('b', 'begin', [2, 0])], {
      pieces: [DECK, WALL],
    });
    expect(sentences(plan)).toEqual([
      'The mark of Abel at “Begin” lies off the deck, or over a hole in it. Move it on to the deck.',
      'The mark of Bea at “Begin” lies inside Party wall. Move one of them.',
    ]);
  });

  test('faster than anybody runs, or with no time at all', () => {
    // 18 m in 1.5 s.
    const hurried = [mark('a', 'begin', [-5, 0], { holdSeconds: 8 }), mark('c', 'end', [5, 0])];
    expect(sentences(blocked(hurried, AWAY))[0]).toMatch(
      /^Abel has to be at “End” 10\.00 m away at \d+\.\d m\/s, faster/,
    );
    const twice = [mark('a', 'begin', [-5, 0]), mark('c', 'begin', [5, 0])];
    expect(sentences(blocked(twice, AWAY))).toEqual([
      'Abel has to be at “Begin” 10.00 m away with no time to get there. Give the walk some.',
    ]);
  });

  test('an open edge is a caution, a guard of 1.1 m at it is none', () => {
    const near = [mark('a', 'begin', [0, 9.2])];
    expect(sentences(blocked(near, AWAY))).toEqual([
      'Abel stands at “Begin” within 0.80 m of an edge of Deck without a guard of about 1.1 m. A warning line stands 1.8 m off; local code and a competent person decide.',
    ]);
    const guard = (heightMetres: number): Piece => ({
      ...run,
      id: 'p',
      label: 'Parapet',
      kind: 'parapet',
      path: square(9.9),
      closed: true,
      heightMetres,
      copingMetres: 0.05,
    });
    expect(sentences(blocked(near, AWAY, { pieces: [DECK, guard(1.1)] }))).toEqual([]);
    expect(sentences(blocked(near, AWAY, { pieces: [DECK, guard(0.6)] }))).toHaveLength(1);
    // The walk comes nearer than both marks.
    const bow = mark('c', 'end', [2, 0], { way: { through: [[1, 9]], line: 'straight' } });
    expect(sentences(blocked([mark('a', 'begin', [0, 0]), bow], AWAY))[0]).toMatch(
      /^Abel walks to “End” within 1\.00 m of an edge/,
    );
    // A drop of a metre is none that needs a guard.
    expect(sentences(blocked(near, AWAY, { pieces: [{ ...DECK, dropMetres: 1 }] }))).toEqual([]);
  });
});

describe('people', () => {
  test('two on one spot, unless one of them sits', () => {
    const at = [mark('b', 'begin', [0.2, 0])];
    expect(sentences(blocked([mark('a', 'begin', [0, 0])], at))).toEqual([
      'Abel and Bea are 0.20 m apart at 0.0 s, one in the other. Move one: bodies need 0.30 m.',
    ]);
    expect(sentences(blocked([mark('a', 'begin', [0, 0], { stance: 'sit' })], at))).toEqual([]);
    // They meet half way, neither at a beat of theirs.
    const across = blocked(
      [mark('a', 'begin', [-4, 0]), mark('c', 'end', [4, 0])],
      [mark('b', 'begin', [4, 0.1]), mark('d', 'end', [-4, 0.1])],
    );
    expect(sentences(across)[0]).toMatch(/^Abel and Bea are 0\.10 m apart at 4\.0 s/);
  });

  test('a pass of nothing, and one that is too far', () => {
    const marks = [[mark('a', 'begin', [0, 0])], [mark('b', 'begin', [3, 0])]] as const;
    const pass = (from: string, to: string) =>
      blocked([...marks[0]], [...marks[1]], { passes: [{ id: 'p', beat: 'middle', from, to }] });
    expect(sentences(pass('abel', 'bea'))).toEqual([
      'Abel and Bea are 3.00 m apart at “Middle”, too far to hand anything over. Hands meet within 1.60 m.',
    ]);
    const nothing = pass('abel', 'bea');
    const [{ prop: _, ...bare }, bea] = nothing.cast;
    expect(sentences({ ...nothing, cast: [bare, bea] })).toEqual([
      'Abel has nothing in hand to give Bea at “Middle”. Give them a prop, or take the pass out.',
    ]);
    expect(sentences(pass('abel', 'abel'))[0]).toMatch(/^Abel hands something to themselves at “Middle”/);
  });

  test('a line of one, and one without a place', () => {
    const line = (one: string, other: string): Partial<Plan> => ({
      lines: [{ id: 'l', pair: [one, other] }],
    });
    expect(sentences(blocked([mark('a', 'begin', [0, 0])], AWAY, line('abel', 'abel')))).toEqual([
      'A line names Abel twice. It runs between two people.',
    ]);
    expect(sentences(blocked([mark('a', 'begin', [0, 0])], [], line('abel', 'bea')))).toEqual([
      'The line of Abel and Bea has no place: Bea has no mark. Put one on the deck.',
    ]);
  });
});

test('beats at one moment, and a setup that covers none', () => {
  const plan = blocked([mark('a', 'begin', [0, 0])], AWAY);
  const [begin, middle, end] = plan.beats;
  const [setup] = plan.setups;
  const [key] = setup.move.keys;
  const still = { ...setup, move: { ...setup.move, keys: [key] }, span: { from: 'begin', to: 'middle' } };
  expect(sentences({ ...plan, beats: [begin, { ...middle, atSeconds: 0 }, end], setups: [still] })).toEqual([
    'Begin and Middle are at one moment, 0.0 s. Move one, or take it out.',
    'Wide covers no time: “Begin” and “Middle” are at one moment. Move a beat, or take another.',
  ]);
});

test('beats may stand in the plan in any order', () => {
  const plan = smallRoof();
  const shuffled = { ...plan, beats: [...plan.beats].reverse() };
  expect(reportOf(shuffled, { at: 1 })).toEqual(reportOf(plan, { at: 1 }));
});

test('a cheat into a wall is taken back by what comes with it', () => {
  const plan = blocked([mark('a', 'begin', [0, 0])], AWAY, { pieces: [DECK, WALL] });
  const [setup] = plan.setups;
  const cheats = [{ performer: 'abel', mark: 'a', at: [2, 0] as Spot }];
  const [wrong] = blockingFaults({ ...plan, setups: [{ ...setup, cheats }] });
  expect(wrong.sentence).toBe(
    'The mark of Abel at “Begin”, as cheated for Wide, lies inside Party wall. Move one of them.',
  );
  expect(wrong.mend?.edit({ ...plan, setups: [{ ...setup, cheats }] }).setups[0]).not.toHaveProperty(
    'cheats',
  );
});
