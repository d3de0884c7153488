import { expect, test } from 'vitest';
import { cautionsOf } from '../../../src/core/cautions/cautions';
import { noteCaution } from '../../../src/core/plan/edits/noteCaution';
import { randomPlan } from '../../plans/crowd';
import { cases } from '../../thorough';

test('of any plan cautions are told in whole sentences, each under its own key, the same again, and notes keep to them', () => {
  for (let seed = 1; seed <= cases(90); seed += 1) {
    const plan = randomPlan(seed);
    const found = cautionsOf(plan);
    expect(new Set(found.map(({ id }) => id)).size, `seed ${seed}`).toBe(found.length);
    for (const { sentence, figures, place, stretches, id } of found) {
      const numbers = [...figures.map(({ value }) => value), ...(place ?? []), ...stretches.flat(2)];
      expect(numbers.every(Number.isFinite), `seed ${seed}, ${id}`).toBe(true);
      expect(sentence, `seed ${seed}`).toMatch(/^\S.*\.$/);
      expect(sentence, `seed ${seed}`).not.toMatch(/NaN|undefined|Infinity|null/);
    }
    expect(cautionsOf(structuredClone(plan)), `seed ${seed}`).toEqual(found);
    const noted = found
      .slice(0, 50)
      .reduce((before, { id }) => noteCaution(before, { key: id, note: 'Seen' }), plan);
    const after = cautionsOf(noted);
    expect(
      after.map(({ id }) => id),
      `seed ${seed}`,
    ).toEqual(found.map(({ id }) => id));
    for (const { id, note } of after.slice(0, 50)) expect(note, `seed ${seed}, ${id}`).toBe('Seen');
  }
});
