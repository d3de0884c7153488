import { expect, test } from 'vitest';
import { formOf, formsAt } from '../../../src/core/form/formsAt';
import { itemsOf } from '../../../src/core/plan/items';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { smallRoofDocument } from '../smallRoof';

function roof(): Plan {
  const parsed = parsePlan(smallRoofDocument());
  if (!parsed.ok) throw new Error('found faults in the small roof, expected none');
  return parsed.value;
}

test('one form an item, in the order of the plan', () => {
  const plan = roof();
  expect(formsAt(plan, 0).map(({ id }) => id)).toEqual(itemsOf(plan).map(({ record }) => record.id));
  const [first] = formsAt(plan, 0);
  expect(first.label).toBe(plan.pieces[0].label);
  expect(first.section).toBe('piece');
  for (const { label, parts } of formsAt(plan, 0)) expect(parts.length, label).toBeGreaterThan(0);
});

test('a performer without marks gives no form', () => {
  const plan = roof();
  const absent: Plan = { ...plan, cast: plan.cast.map((performer) => ({ ...performer, marks: [] })) };
  expect(formsAt(absent, 0).some(({ section }) => section === 'cast')).toBe(false);
  expect(formOf(absent, plan.cast[0].id, 0)).toBeNull();
});

test('what does not change is the same object at every instant and after every edit beside it', () => {
  const plan = roof();
  const before = formsAt(plan, 0);
  const later = formsAt(plan, 0.7);
  const [piece, gear] = [plan.pieces[0], plan.gear[0]];
  const edited: Plan = {
    ...plan,
    title: 'Another title',
    pieces: [...plan.pieces],
    gear: plan.gear.map((each, k) => (k === 0 ? { ...each, label: 'Renamed' } : each)),
  };
  // The renamed stand, and what it carries.
  const touched = new Set([
    gear.id,
    ...plan.gear.flatMap((each) =>
      'place' in each && 'on' in each.place && each.place.on === gear.id ? [each.id] : [],
    ),
  ]);
  const after = formsAt(edited, 0);
  before.forEach((form, k) => {
    if (form.section === 'cast') return;
    expect(later[k]).toBe(form);
    if (!touched.has(form.id)) expect(after[k]).toBe(form);
  });
  expect(after.find(({ id }) => id === gear.id)?.label).toBe('Renamed');
  const dried: Plan = { ...plan, ground: { ...plan.ground, wetness: 'dry' } };
  expect(formOf(dried, piece.id, 0)).not.toBe(formOf(plan, piece.id, 0));
});

test('the form of one item is that of the list', () => {
  const plan = roof();
  for (const form of formsAt(plan, 0.4)) expect(formOf(plan, form.id, 0.4)).toBe(form);
  expect(formOf(plan, 'nobody', 0)).toBeNull();
});
