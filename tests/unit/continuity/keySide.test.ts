import { describe, expect, test } from 'vitest';
import { type KeySideFinding, keySides } from '../../../src/core/continuity/keySide';
import { KeyLight, keyInstants, showsFace } from '../../../src/core/continuity/keySideReading';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Setup } from '../../../src/core/plan/schema/setup';
import { keySideSentence } from '../../../src/core/report/continuity/keySideSentence';
import { type KeyedFace, keyedFace, keyOn } from '../../plans/keyedFace';
import { DEMO, readPlan } from '../../plans/readPlan';

const WIDE = {
  id: 'wide',
  label: 'Wide',
  at: [0, 6] as [number, number],
  headingDegrees: 0,
  lens: 'wide' as const,
};
const roofWith = (gear: readonly Gear[], more: Partial<KeyedFace> = {}): Plan =>
  keyedFace({ gear, cameras: [WIDE], ...more });
const told = (plan: Plan, k = 0): string => keySideSentence(plan, keySides(plan)[k]);

/** Turned an eighth clockwise for the second camera. */
const eighth = (headingDegrees: number): Setup['cheats'] => [
  { performer: 'vera', mark: 'v1', at: [0.1, 0], headingDegrees },
];
const second = (headingDegrees: number) => ({
  ...WIDE,
  id: 'second',
  label: 'Second',
  cheats: eighth(headingDegrees),
});

describe('a key that shows no side', () => {
  test('from the front, from behind, or none is said as such', () => {
    const front = roofWith(keyOn('1', [0.3, 4], [0, 0]));
    expect(keySides(front)[0].standing).toBe('said');
    expect(told(front)).toBe('A has Vera’s key from the front, within 10° of where the face looks.');
    const back = roofWith(keyOn('1', [0.5, -4], [0, 0]));
    expect(told(back)).toBe('A has Vera lit from behind only: no key on the face.');
    expect(told(roofWith([]))).toBe('A has no lamp on Vera’s face, only the glow of the sky.');
  });

  test('against one that the wide has, says what to turn', () => {
    const plan = roofWith(keyOn('1', [-2.5, 2.5], [0, 0]), { cameras: [WIDE, second(222)] });
    const found = keySides(plan)[1];
    expect([found.standing, found.key.from, found.established?.from]).toEqual(['said', 'front', 'right']);
    expect(told(plan, 1)).toMatch(
      /^B has Vera’s key from the front, within 10° of where the face looks\. Turn Head 1 4\d° to camera left about Vera to hold\.$/,
    );
  });
});

describe('what has to turn', () => {
  test('is nothing where the key is a practical: that stays where it is', () => {
    const bulb: Gear = {
      id: 'bulb',
      label: 'Porch bulb',
      kind: 'practical',
      head: 'globe',
      at: [-1.2, 1.8, 1.2],
      headingDegrees: 0,
      dim: 1,
    };
    const plan = roofWith([bulb], { cameras: [WIDE, second(260)] });
    const found = keySides(plan)[1];
    expect([found.standing, found.turn]).toEqual(['breaks', null]);
    expect(told(plan, 1)).toBe(
      'B has Vera’s key on the left of the face, A on its right; that key is not one to turn.',
    );
  });

  test('is the frame and the lamp behind it, each about her, where a frame is the key', () => {
    const frame: Gear = {
      id: 'frame',
      label: 'Frame 1',
      kind: 'frame',
      place: { at: [-1.2, 1.7, 1.2] },
      headingDegrees: 225,
      tiltDegrees: 0,
      size: [1.2, 1.2],
      transmission: 0.5,
    };
    const plan = roofWith([...keyOn('1', [-2.5, 2.5], [0, 0], 1, 1.4), frame], {
      cameras: [WIDE, second(260)],
    });
    const [wide, found] = keySides(plan);
    expect([wide.key.keyId, wide.key.fedBy, wide.key.from]).toEqual(['frame', '1', 'right']);
    expect(found.turn?.moves.map(({ itemId }) => itemId)).toEqual(['frame', '1-stand']);
    const about = found.turn?.about ?? [0, 0];
    for (const { from, to } of found.turn?.moves ?? []) {
      const reach = ([x, z]: readonly [number, number]) => Math.hypot(x - about[0], z - about[1]);
      expect(reach(to)).toBeCloseTo(reach(from), 2);
    }
  });
});

describe('which faces are asked', () => {
  const key = keyOn('1', [-2.5, 2.5], [0, 0]);
  const shows = (camera: Partial<typeof WIDE>, more: Partial<KeyedFace> = {}): boolean => {
    const plan = roofWith(key, { cameras: [{ ...WIDE, ...camera }], ...more });
    return showsFace(new KeyLight(plan), plan.setups[0], 'vera', 0);
  };

  test('those in frame that look towards the lens with nothing before them', () => {
    expect(shows({})).toBe(true);
    expect(shows({ headingDegrees: 90 })).toBe(false);
    expect(shows({ at: [0, -6], headingDegrees: 180 })).toBe(false);
    const board = {
      id: 'board',
      label: 'Board',
      kind: 'box',
      at: [0, 0, 3],
      headingDegrees: 0,
      size: [2, 2.2, 0.05],
      material: 'timber',
    } as const;
    expect(shows({}, { pieces: [{ ...board, at: [0, 0, 3], size: [2, 2.2, 0.05] }] })).toBe(false);
  });

  test('at the start, the middle and the end of a setup and at the beats within', () => {
    const plan = readPlan(DEMO);
    const wide = plan.setups.find(({ id }) => id === 'wide');
    if (!wide) throw new Error('the demo has a wide');
    expect(keyInstants(plan, wide)).toEqual([9, 14, 17.5, 18, 22, 26]);
  });
});

describe('the establishing setup', () => {
  const cameras = [WIDE, { ...WIDE, id: 'second', label: 'Second' }];

  test('is the first that shows the face, or the one that her line names', () => {
    const plan = roofWith(keyOn('1', [-2.5, 2.5], [0, 0]), { cameras });
    const established = (found: readonly KeySideFinding[]) =>
      found.map(({ setupId, againstId }) => [setupId, againstId]);
    expect(established(keySides(plan))).toEqual([
      ['wide', null],
      ['second', 'wide'],
    ]);
    const lined: Plan = { ...plan, lines: [{ id: 'l', pair: ['vera', 'nobody'], establishedBy: 'second' }] };
    expect(established(keySides(lined))).toEqual([
      ['wide', 'second'],
      ['second', null],
    ]);
  });
});

test('the demo: each face has its key, it holds throughout, and each is said in a short sentence', () => {
  const plan = readPlan(DEMO);
  const found = keySides(plan);
  expect(found.length).toBeGreaterThan(6);
  expect(found.filter(({ standing }) => standing === 'breaks')).toEqual([]);
  for (const finding of found) {
    const words = keySideSentence(plan, finding);
    expect(words.split(/[ \u00a0]/).length, words).toBeLessThanOrEqual(26);
    expect(words).toMatch(/^[A-H] .*\.$/);
  }
});
