import { describe, expect, test } from 'vitest';
import { type KeySideFinding, keySides, keyStanding } from '../../../src/core/continuity/keySide';
import { KeyLight, type KeyReading, keyIn } from '../../../src/core/continuity/keySideReading';
import type { KeyTurn } from '../../../src/core/continuity/keySideTurn';
import { turnItems } from '../../../src/core/plan/edits/turnItems';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Setup } from '../../../src/core/plan/schema/setup';
import { keySideSentence } from '../../../src/core/report/continuity/keySideSentence';
import { keyedFace, keyOn } from '../../plans/keyedFace';

/**
 * The textbook's rule: the key stays on the side of the face that the wide established, in the close-ups too, even when
 * the scene is turned for a better background; then the lamps turn with it. Common practice, no source.
 */
const WIDE = {
  id: 'wide',
  label: 'Wide',
  at: [0, 6] as [number, number],
  headingDegrees: 0,
  lens: 'wide' as const,
};

/** The close-up: the scene turned a quarter clockwise, Vera a step off her mark, the camera round with it. */
const single = (cheats: Setup['cheats']) => ({
  id: 'single',
  label: 'Single',
  at: [-2.6, -0.2] as [number, number],
  headingDegrees: 90,
  ...(cheats && { cheats }),
});
const TURNED: Setup['cheats'] = [{ performer: 'vera', mark: 'v1', at: [0.3, -0.2], headingDegrees: 270 }];

/** 45° to Vera's own right in the wide, at camera left. */
const key = keyOn('1', [-2.5, 2.5], [0, 0]);
const plan = keyedFace({ gear: key, cameras: [WIDE, single(TURNED)] });

const of = (found: readonly KeySideFinding[], setupId: string): KeySideFinding => {
  const finding = found.find((each) => each.setupId === setupId);
  if (!finding) throw new Error(`Nothing was found of ${setupId}`);
  return finding;
};
const readingIn = (lit: Plan, setupId: string): KeyReading => {
  const setup = lit.setups.find(({ id }) => id === setupId);
  const reading = setup ? keyIn(new KeyLight(lit), setup, 'vera', 0) : null;
  if (!reading) throw new Error(`There is no key in ${setupId}`);
  return reading;
};
/** The plan with the lamps as they stand for the close-up. */
const afterTurn = (before: Plan, { moves, turnDegrees, about }: KeyTurn): Plan =>
  turnItems(before, { ids: moves.map(({ itemId }) => itemId), byDegrees: turnDegrees, about });

describe('a scene turned for a better background', () => {
  test('flips the key where the lamps are left standing', () => {
    const found = keySides(plan);
    const wide = of(found, 'wide');
    expect([wide.establishes, wide.standing, wide.key.from, wide.key.cameraSide]).toEqual([
      true,
      'holds',
      'right',
      'left',
    ]);
    // 45° about her feet; her eyes are a hand's breadth nearer to it.
    expect(wide.key.offFaceDegrees).toBeCloseTo(46.4, 0);
    const flipped = of(found, 'single');
    expect([flipped.againstId, flipped.standing, flipped.key.from, flipped.established?.from]).toEqual([
      'wide',
      'breaks',
      'left',
      'right',
    ]);
  });

  test('holds with the key turned by the angle that is named, and comes from the very bearing', () => {
    const { turn } = of(keySides(plan), 'single');
    if (!turn) throw new Error('Nothing is to turn');
    const turned = afterTurn(plan, turn);
    const [before, after] = [readingIn(plan, 'wide'), readingIn(turned, 'single')];
    expect(keyStanding(after, before)).toBe('holds');
    expect(after.offFaceDegrees).toBeCloseTo(before.offFaceDegrees ?? Number.NaN, 1);
    expect(after.cameraSide).toBe('left');
    // Where it says the stand comes to, it comes to.
    const stand = turned.gear.find(({ id }) => id === '1-stand');
    const [move] = turn.moves;
    expect(stand?.kind === 'stand' && [stand.at[0], stand.at[2]]).toEqual(move.to);
    const head = turned.gear.find(({ id }) => id === '1');
    expect(head?.kind === 'head' && head.aim).toEqual(move.aim);
  });

  test('holds with the key turned by hand with the scene: a quarter about the new mark', () => {
    // From 2.5 m to camera left and 2.5 m before her in the wide: round her new mark, that is −x and −z of it.
    const byHand = keyedFace({
      gear: keyOn('1', [-2.2, -2.7], [0.3, -0.2]),
      cameras: [WIDE, single(TURNED)],
    });
    expect(keyStanding(readingIn(byHand, 'single'), readingIn(plan, 'wide'))).toBe('holds');
    expect(keyStanding(readingIn(plan, 'single'), readingIn(plan, 'wide'))).toBe('breaks');
  });

  test('is told in one sentence with the lamp, the angle, the way and about whom', () => {
    const finding = of(keySides(plan), 'single');
    // The lamp left standing is at −44° where the wide has it at 45°, less a little since she stepped off.
    expect(keySideSentence(plan, finding)).toMatch(
      /^B has Vera’s key on the left of the face, A on its right\. Turn Head 1 (8[5-9]|9[0-3])° to camera left about Vera to hold\.$/,
    );
    expect(keySideSentence(plan, of(keySides(plan), 'wide'))).toBe(
      'A sets Vera’s key on the right of the face: Head 1, 46° off it, from camera left.',
    );
  });
});

test('a close-up of the scene as it stands holds, wherever its camera is', () => {
  const across = { id: 'single', label: 'Single', at: [-2.6, 0.9] as [number, number], headingDegrees: 71 };
  const still = keyedFace({ gear: key, cameras: [WIDE, across] });
  const finding = of(keySides(still), 'single');
  expect([finding.standing, finding.key.from, finding.turn]).toEqual(['holds', 'right', null]);
  expect(keySideSentence(still, finding)).toMatch(
    /^B keeps Vera’s key on the right of the face, as A does: Head 1, 46° off it, from camera right\.$/,
  );
});
