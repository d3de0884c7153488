import { describe, expect, test } from 'vitest';
import { bestSpot, heldFast } from '../../../src/core/clearance/useful/bestSpot';
import { putLamp } from '../../../src/core/clearance/useful/putLamp';
import { ROLE_RANGES } from '../../../src/core/clearance/useful/roles';
import type { UsefulAnswer, UsefulGround, UsefulQuestion } from '../../../src/core/clearance/useful/types';
import { USEFUL_STATES } from '../../../src/core/clearance/useful/types';
import { usefulGroundSteps } from '../../../src/core/clearance/useful/usefulGround';
import { bestSentence, usefulSentence, usefulWords } from '../../../src/core/clearance/useful/words';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { inOneGo } from '../../../src/core/units/steps';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const plan = keyedFace({
  gear: [...keyOn('1', [-2.5, 2.5], [0, 0]), ...keyOn('2', [5, -2], [0, 0], 0.2)],
  cameras: [{ id: 'close', label: 'Close', at: [0, 3], headingDegrees: 0, lens: 'long' }],
});
const question: UsefulQuestion = {
  lampId: '2',
  performerId: 'vera',
  setupId: 'close',
  seconds: 0,
  role: 'edge',
  range: ROLE_RANGES.edge,
  side: 'either',
  stops: 0,
  toleranceStops: 0.5,
  mayDim: true,
  clearOf: ['close'],
  stepMetres: 1,
};

/** From anywhere, so that room is asked on every clear square. */
const ALL_ROUND = { bearingDegrees: [0, 180], elevationDegrees: [-90, 90], metres: [0, 50] } as const;

function answerTo(asked: Partial<UsefulQuestion>, of: Plan = plan): UsefulAnswer {
  return inOneGo(usefulGroundSteps(of, { ...question, ...asked }));
}
function usefulFor(asked: Partial<UsefulQuestion> = {}, of: Plan = plan): UsefulGround {
  const answer = answerTo(asked, of);
  if ('why' in answer) throw new Error(answer.why);
  return answer.useful;
}
const whyNot = (asked: Partial<UsefulQuestion>, of: Plan = plan): string => {
  const answer = answerTo(asked, of);
  return 'why' in answer ? answer.why : 'an answer';
};
const count = ({ states }: UsefulGround, state: (typeof USEFUL_STATES)[number]): number =>
  states.filter((code) => USEFUL_STATES[code] === state).length;
/** The face looks along +z, so its own right is −x. */
const sides = (useful: UsefulGround): readonly number[] =>
  [...useful.states.keys()]
    .filter((square) => USEFUL_STATES[useful.states[square]] === 'useful')
    .map((square) => useful.corner[0] + ((square % useful.columns) + 0.5) * useful.stepMetres);

describe('says why there is no answer', () => {
  test.each<[Partial<UsefulQuestion>, string]>([
    [{ lampId: '2-stand' }, 'Choose one lamp that has a place of its own.'],
    [{ lampId: 'nothing' }, 'Choose one lamp that has a place of its own.'],
    [{ setupId: 'nothing' }, 'There is no setup to light for: place a camera first.'],
    [{ performerId: 'nobody' }, 'There is nobody on a mark to light at this moment.'],
    [{ clearOf: [] }, 'No setup was named: expected at least one that it has to stay clear of.'],
  ])('%j', (asked, sentence) => {
    expect(whyNot(asked)).toBe(sentence);
  });

  test('of a lamp that is off, where its dim stays', () => {
    const off = { ...plan, gear: plan.gear.map((gear) => (gear.id === '2' ? { ...gear, dim: 0 } : gear)) };
    expect(whyNot({ mayDim: false }, off)).toBe('Head 2 is off at this moment.');
    expect(whyNot({ mayDim: true }, off)).toBe('an answer');
  });
});

test('keeps to a side of the face, to a distance, and to a level', () => {
  const both = usefulFor();
  expect(Math.min(...sides(both))).toBeLessThan(0);
  expect(Math.max(...sides(both))).toBeGreaterThan(0);
  expect(Math.max(...sides(usefulFor({ side: 'right' })))).toBeLessThan(0);
  expect(Math.min(...sides(usefulFor({ side: 'left' })))).toBeGreaterThan(0);
  const near = usefulFor({ range: { ...ROLE_RANGES.edge, metres: [1, 4] } });
  expect(count(near, 'useful')).toBeGreaterThan(0);
  expect(count(near, 'useful')).toBeLessThan(count(both, 'useful'));
  // As it is dimmed it is far too strong; at full it cannot give thousands of times as much.
  expect(count(usefulFor({ mayDim: false }), 'too strong')).toBeGreaterThan(0);
  const bright = usefulFor({ stops: 10 });
  expect(count(bright, 'useful')).toBe(0);
  expect(count(bright, 'too weak')).toBeGreaterThan(0);
});

test('bags over the legs of its stand go along, and are in nobody’s way', () => {
  const bag: Gear = {
    id: 'bag',
    label: 'Bag',
    kind: 'sandbag',
    at: [5.25, 0, -2],
    headingDegrees: 0,
    kilograms: 10,
  };
  const asked = { stepMetres: 0.25, role: 'key' as const, range: ALL_ROUND };
  const bare = usefulFor(asked);
  const bagged = usefulFor(asked, { ...plan, gear: [...plan.gear, bag] });
  expect(count(bagged, 'no room')).toBe(count(bare, 'no room'));
  // Left behind, it would be.
  const loose = usefulFor(asked, { ...plan, gear: [...plan.gear, { ...bag, at: [3.25, 0, -2] }] });
  expect(count(loose, 'no room')).toBeGreaterThan(count(bare, 'no room'));
});

test('a lamp that gives less than another on its side is outshone', () => {
  const two = keyedFace({
    gear: [...keyOn('1', [-4, -2], [0, 0], 1), ...keyOn('2', [5, -2], [0, 0], 0.2)],
    cameras: [{ id: 'close', label: 'Close', at: [0, 3], headingDegrees: 0, lens: 'long' }],
  });
  const useful = usefulFor({}, two);
  expect(count(useful, 'useful')).toBe(0);
  expect(count(useful, 'outshone')).toBeGreaterThan(0);
  expect(usefulSentence(two, useful, 'm')).toMatch(
    /^Nowhere on the deck can Head 2 be the edge light of Vera: /,
  );
});

test('puts the lamp with its stand in the best spot, aimed and dimmed, and says so; locked it stays', () => {
  const useful = usefulFor();
  const best = bestSpot(useful);
  if (!best) throw new Error('no spot');
  const there = putLamp(plan, best);
  const head = there.gear.find(({ id }) => id === '2');
  const stand = there.gear.find(({ id }) => id === '2-stand');
  expect(stand && 'at' in stand && [stand.at[0], stand.at[2]]).toEqual(best.to);
  expect(head).toMatchObject({ dim: best.dim });
  expect(
    head?.kind === 'head' && Math.hypot(head.aim[0] - best.aim[0], head.aim[1] - best.aim[1]),
  ).toBeLessThan(0.01);
  expect(bestSentence(best, 'm')).toMatch(
    /^The best spot is the least move: \d\.\d\d\u00a0m, then at [\d.]+\u00a0% it gives [+−]?0\.\d\u00a0stops from the set stop\.$/,
  );
  expect(usefulSentence(plan, useful, 'm')).toMatch(
    /^Head 2 can be the edge light of Vera from \d+\.\d\u00a0m² of the deck\.$/,
  );
  const square = useful.states.findIndex((state) => USEFUL_STATES[state] === 'useful');
  expect(usefulWords(plan, useful, square)).toMatch(/^edge light for Vera at [\d.]+\u00a0%, /);
  expect(usefulWords(plan, useful, useful.states.indexOf(USEFUL_STATES.indexOf('out of its role')))).toBe(
    'not from there, or not so far off',
  );

  expect(heldFast(plan, '2')).toBeNull();
  const locked = {
    ...plan,
    gear: plan.gear.map((gear) => (gear.id === '2-stand' ? { ...gear, locked: true } : gear)),
  };
  expect(heldFast(locked, '2')).toBe('Stand of 2 is locked in its place: unlock it to put it elsewhere.');
});

test('of a lamp whose cues play it tells the dim that they have come to, and leaves its own', () => {
  const cued = {
    ...plan,
    gear: plan.gear.map((gear) =>
      gear.id === '2' ? { ...gear, cues: [{ atSeconds: 0, dim: 0.4, fadeSeconds: 0 }] } : gear,
    ),
  };
  const useful = usefulFor({ toleranceStops: 12 }, cued);
  const square = useful.states.findIndex((state) => USEFUL_STATES[state] === 'useful');
  expect(usefulWords(cued, useful, square)).toMatch(/^edge light for Vera at 40\u00a0%, /);
  const best = bestSpot(useful);
  if (!best) throw new Error('no spot');
  expect(bestSentence(best, 'm')).toContain('then at 40\u00a0% it gives');
  expect(putLamp(cued, best).gear.find(({ id }) => id === '2')).toMatchObject({ dim: 0.2 });
});

test('without a useful square there is no best spot', () => {
  expect(bestSpot(usefulFor({ stops: 10 }))).toBeNull();
});
