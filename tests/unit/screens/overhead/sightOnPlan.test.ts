import { expect, test } from 'vitest';
import type { Explanation } from '../../../../src/core/clearance/explain/types';
import { sightPoints } from '../../../../src/scene/walk/sightLines';
import { sightOnPlan } from '../../../../src/screens/overhead/explain/sightOnPlan';
import { smallRoof } from '../../smallRoof';

const plan = smallRoof();
const common = { setupId: 'master', itemId: 'stand-in', seconds: 1, eye: [0, 1.5, 4] } as const;
const end = { itemId: 'stand-in', part: 'column', at: [1, 1, -4] } as const;
const frame = [
  [-1, 2, -4],
  [1, 2, -4],
  [1, 1, -4],
  [-1, 1, -4],
] as const;
const seen = { ...common, end, frameAt: [0.9, 0.5], frame } as const;
const mirror = { itemId: 'deck', part: 'top', at: [0.5, 0, 0] } as const;
const coverer = { itemId: 'fence', part: 'mesh', at: [0.25, 1.4, 2] } as const;

test('what shows is a line from the lens to the part, across its frame', () => {
  const drawn = sightOnPlan(plan, { ...seen, kind: 'showing' }, 'm');
  expect(drawn?.seen).toEqual([
    [0, 4],
    [1, -4],
  ]);
  expect(drawn?.hidden).toEqual([]);
  expect(drawn?.edges).toHaveLength(4);
  expect(drawn?.notes).toEqual([{ at: [1, -4], kind: 'end', words: 'column, 8.08\u00a0m' }]);
});

test('what is mirrored turns where the mirror is, what is covered stops there and goes on hidden', () => {
  const mirrored = sightOnPlan(plan, { ...seen, kind: 'mirrored', mirror, angleDegrees: 20 }, 'm');
  expect(mirrored?.seen).toEqual([
    [0, 4],
    [0.5, 0],
    [1, -4],
  ]);
  expect(mirrored?.notes.map(({ words }) => words)).toEqual(['column', 'turns in Deck, 4.30\u00a0m']);
  const covered = sightOnPlan(plan, { ...seen, kind: 'covered', coverer }, 'm');
  expect(covered?.seen.at(-1)).toEqual([0.25, 2]);
  expect(covered?.hidden).toEqual([
    [0.25, 2],
    [1, -4],
  ]);
  expect(covered?.notes[1]?.words).toBe('hidden by Fence, 2.02\u00a0m');
});

test('behind the camera there is nothing to draw', () => {
  const behind: Explanation = { ...common, kind: 'behind' };
  expect(sightOnPlan(plan, behind, 'm')).toBeNull();
  expect(sightPoints(behind)).toEqual({ sight: [], rest: [] });
});

test('in the walk-round the line goes from the pupil by way of the mirror to the part', () => {
  const { sight, rest } = sightPoints({ ...seen, kind: 'mirrored', mirror, angleDegrees: 20 });
  expect(sight.slice(0, 12)).toEqual([...common.eye, ...mirror.at, ...mirror.at, ...end.at]);
  // The frame around, and its four edges from the lens.
  expect(rest).toHaveLength(8 * 6);
  const covered = sightPoints({ ...seen, kind: 'covered', coverer });
  expect(covered.sight.slice(0, 6)).toEqual([...common.eye, ...coverer.at]);
});
