import { expect, test } from 'vitest';
import { keySides } from '../../../src/core/continuity/keySide';
import { turnItems } from '../../../src/core/plan/edits/turnItems';
import { keySideSentence } from '../../../src/core/report/continuity/keySideSentence';
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

test('somebody who is turned otherwise later needs another turn of the key then, and the sentence says both', () => {
  const cheats = [
    { performer: 'vera', mark: 'v1', at: [0.1, 0] as [number, number], headingDegrees: 265 },
    { performer: 'vera', mark: 'v2', at: [0.1, 0] as [number, number], headingDegrees: 245 },
  ];
  const still = keyedFace({ gear: keyOn('1', [-2.5, 2.5], [0, 0]), cameras: [WIDE] });
  const end = still.beats[still.beats.length - 1];
  const plan = {
    ...still,
    cast: still.cast.map((vera) => ({
      ...vera,
      marks: [...vera.marks, { ...vera.marks[0], id: 'v2', beat: end.id, holdSeconds: 0 }],
    })),
    setups: [...still.setups, { ...still.setups[0], id: 'second', label: 'Second', cheats }],
  };
  const [, second] = keySides(plan);
  const degrees = second.turns.map(({ turn }) => Math.round(turn.turnDegrees));
  expect(second.turns[0]).toEqual({ seconds: second.atSeconds, turn: second.turn });
  // She is turned back by twenty degrees, and her eyes go along: the key needs about as many less.
  expect(Math.abs(degrees[0] - (degrees.at(-1) ?? 0) - 20)).toBeLessThanOrEqual(1);
  expect(keySideSentence(plan, second).replaceAll('\u00a0', ' ')).toMatch(
    /Turn Head 1 \d+° to camera left about Vera to hold at 0\.0 s; it takes \d+° to camera left at /,
  );
});
