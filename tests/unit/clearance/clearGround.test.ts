import { describe, expect, test } from 'vitest';
import { clearGround, clearGroundSteps } from '../../../src/core/clearance/ground/clearGround';
import type { GroundQuestion } from '../../../src/core/clearance/ground/types';
import { cameraAt } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import { smallRoof } from '../smallRoof';

const plan = smallRoof();
const of = { heightMetres: 2.4 };
const whyNot = (question: GroundQuestion, asked = plan): string => {
  const answer = clearGround(asked, question);
  return 'why' in answer ? answer.why : 'an answer';
};

describe('says why there is no answer', () => {
  test.each<[GroundQuestion, string]>([
    [{ setupIds: [], of }, 'No setup was named: expected at least one that it has to stay clear of.'],
    [{ setupIds: ['crane'], of }, 'There is no setup "crane" in this plan.'],
    [
      { setupIds: ['still'], of: { heightMetres: 0 } },
      'The height of a stand: found 0 m, expected more than 0 and at most 30 m.',
    ],
    [
      { setupIds: ['still'], of: { heightMetres: 31 } },
      'The height of a stand: found 31 m, expected more than 0 and at most 30 m.',
    ],
    [
      { setupIds: ['still'], of, stepMetres: 0 },
      'The side of a square: found 0 m, expected at least 0.05 m.',
    ],
    [
      { setupIds: ['still'], of: { itemId: 'ana' } },
      'There is no thing "ana" in this plan that could stand somewhere.',
    ],
    [
      { setupIds: ['still'], of: { itemId: 'fence' } },
      'Fence has no foot of its own: expected something that stands in one place.',
    ],
  ])('%j', (question, sentence) => {
    expect(whyNot(question)).toBe(sentence);
  });

  test('no deck', () => {
    expect(whyNot({ setupIds: ['still'], of }, { ...plan, pieces: [] })).toBe(
      'This plan has no deck that something could stand on.',
    );
  });
});

test('an item is asked with what it carries, and is not in its own way', () => {
  const answer = clearGround(plan, { setupIds: ['master'], of: { itemId: 'head-in' }, stepMetres: 0.5 });
  if ('why' in answer) throw new Error(answer.why);
  const { thing, columns, rows, stepMetres, corner, states } = answer.ground;
  expect(thing).toBe('Lamp stand 1');
  expect([columns, rows]).toEqual([40, 32]);
  const own =
    Math.floor((-4 - corner[1]) / stepMetres) * columns + Math.floor((1.2 - corner[0]) / stepMetres);
  expect(states[own]).toBe(5);
});

test('tells how far it is, and gives the same twice', () => {
  const question = { setupIds: ['master'], of, stepMetres: 1 };
  const shares = [...clearGroundSteps(plan, question)];
  expect(shares.length).toBeGreaterThan(0);
  expect(shares.every((share, k) => share >= (shares[k - 1] ?? 0) && share <= 1)).toBe(true);
  expect(clearGround(plan, question)).toEqual(clearGround(plan, question));
});

test('what is thin and under the limit is never in frame', () => {
  const setupId = 'single';
  const answer = clearGround(plan, { setupIds: [setupId], of, stepMetres: 0.5 });
  const setup = plan.setups.find(({ id }) => id === setupId);
  if ('why' in answer || !setup) throw new Error('no answer');
  const { corner, columns, stepMetres, deckMetres, limitMetres } = answer.ground;
  const camera = cameraAt(plan, setup, 0);
  const reach = stepMetres / 2 + 0.0499;
  const seen = [...limitMetres.keys()].filter((square) => {
    const x = corner[0] + ((square % columns) + 0.5) * stepMetres;
    const z = corner[1] + (Math.floor(square / columns) + 0.5) * stepMetres;
    return [-reach, reach].some((dx) =>
      [-reach, reach].some((dz) => {
        for (let y = 0; y < Math.min(limitMetres[square], 12) - 1e-3; y += 0.1) {
          const at = projectPoint(camera, [x + dx, deckMetres[square] + y, z + dz]);
          if (at && at.depth > 0.2 && at.x >= 0 && at.x <= 1 && at.y >= 0 && at.y <= 1) return true;
        }
        return false;
      }),
    );
  });
  expect(seen).toEqual([]);
});
