import { expect, test } from 'vitest';
import { keySides } from '../../../src/core/continuity/keySide';
import { turnItems } from '../../../src/core/plan/edits/turnItems';
import { keyedFace, keyOn } from '../../plans/keyedFace';

const WIDE = {
  id: 'wide',
  label: 'Wide',
  at: [0, 6] as [number, number],
  headingDegrees: 0,
  lens: 'wide' as const,
};

test('the stand of a flipped key, turned about the face, brings the key to where the wide had it, at its height and distance', () => {
  const cheats = [{ performer: 'vera', mark: 'v1', at: [0.1, 0] as [number, number], headingDegrees: 260 }];
  const plan = keyedFace({
    gear: keyOn('1', [-2.5, 2.5], [0, 0]),
    cameras: [WIDE, { ...WIDE, id: 'second', label: 'Second', cheats }],
  });
  const [wide, second] = keySides(plan);
  const { turn } = second;
  if (!turn) throw new Error('the key has flipped');
  expect(turn.moves.map(({ itemId }) => itemId)).toEqual(['1-stand']);
  const turned = turnItems(plan, {
    ids: turn.moves.map(({ itemId }) => itemId),
    byDegrees: turn.turnDegrees,
    about: turn.about,
  });
  const stand = turned.gear.find(({ id }) => id === '1-stand');
  expect(stand && 'at' in stand && [stand.at[0], stand.at[2]]).toEqual(turn.moves[0].to);
  const after = keySides(turned)[1].key;
  expect(after.from).toBe(wide.key.from);
  expect(after.offFaceDegrees).toBeCloseTo(wide.key.offFaceDegrees ?? 0, 0);
});
