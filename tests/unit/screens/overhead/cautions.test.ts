import { expect, test } from 'vitest';
import { cautionsOf } from '../../../../src/core/cautions/cautions';
import type { Caution } from '../../../../src/core/cautions/types';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { drawnCaution, marksOf } from '../../../../src/screens/overhead/cautions/marks';
import { about, DECK, flagOn, parapet, roof, standAt } from '../../../unit/cautions/roof';

const NBSP = '\u00a0';
const plan = roof({
  pieces: [DECK, parapet(0.9)],
  gear: [
    standAt('near', [9, 0, 0], { heightMetres: 1.5 }),
    standAt('nearer', [0, 0, 5.2], { heightMetres: 1.5 }),
    standAt('stand', [0, 0, 0]),
    flagOn('flag', 'stand', { headingDegrees: 90 }),
  ],
});
const one = (of: Plan, matter: string): Caution => {
  const [found] = about(of, matter);
  if (!found) throw new Error(`no caution about ${matter}`);
  return found;
};

test('one sign stands for all cautions of a place, the heaviest first, and is quiet once all are noted', () => {
  const cautions = cautionsOf(plan);
  const marks = marksOf(cautions, new Set(), 0.3);
  const ids = marks.flatMap(({ keys }) => keys);
  expect(ids.toSorted()).toEqual(cautions.flatMap(({ id, place }) => (place ? [id] : [])).toSorted());
  const shared = marks.find(({ keys }) => keys.includes('wind/nearer'));
  expect(shared?.keys.length).toBeGreaterThan(1);
  expect(shared?.standing).toBe('breaks');
  expect(shared?.spoken).toMatch(/^\d cautions in this place, the first: /);
  expect(marks.every(({ noted }) => !noted)).toBe(true);
  expect(marksOf(cautions, new Set(ids), 0.3).every(({ noted }) => noted)).toBe(true);
  // From far away all are one.
  expect(marksOf(cautions, new Set(), 100)).toHaveLength(1);
});

test('an open edge is drawn along its length, what is near it by its distance', () => {
  const edge = drawnCaution(plan, one(plan, 'edge-open'), 'm');
  expect(edge.edges.length).toBeGreaterThan(0);
  expect(edge.distances).toEqual([]);
  expect(edge.rings).toEqual([]);
  const gear = drawnCaution(plan, one(plan, 'edge-gear'), 'm');
  expect(gear.edges).toEqual([]);
  expect(gear.rings).toHaveLength(2);
  expect(gear.distances.map(({ words }) => words)).toEqual([`1.0${NBSP}m`, `0.8${NBSP}m`]);
});

test('a stand has the wind that tips it, with its name, and the way in which it blows', () => {
  const { wind, words, rings } = drawnCaution(plan, one(plan, 'wind/stand'), 'm');
  expect(rings).toEqual([[0, 0]]);
  expect(words).toMatch(/^tips in \d\.\d\u00a0m\/s \(\d+\u00a0mph, Beaufort\u00a0\d, [a-z ]+\)$/);
  expect(wind?.at).toEqual([0, 0]);
  // The flag's face is to the right: the wind comes from there or goes there, at a slant at most.
  expect(Math.abs(Math.sin(((wind?.headingDegrees ?? 0) * Math.PI) / 180))).toBeGreaterThan(0.5);
});

test('what weighs most says what it weighs', () => {
  expect(drawnCaution(plan, one(plan, 'load-most'), 'm').words).toMatch(/^\d+\u00a0kg$/);
});
