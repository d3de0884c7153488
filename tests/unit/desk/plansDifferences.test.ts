import { expect, test } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import { removeSetup } from '../../../src/core/plan/edits/removeSetup';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { sameData } from '../../../src/core/units/sameData';
import { differenceSentence, differencesOf } from '../../../src/desk/plans/differences';
import { isDrastic } from '../../../src/desk/plans/drastic';
import { keepRecords } from '../../../src/desk/plans/same';
import { titleWith } from '../../../src/desk/plans/titles';
import { rooftop } from '../core/plan/edits/rooftop';

const said = (before: Plan, after: Plan): string => differenceSentence(differencesOf(before, after));

const withoutTwo = (plan: Plan): Plan =>
  [...plan.gear, ...plan.pieces].slice(0, 2).reduce((left, { id }) => removeItems(left, { ids: [id] }), plan);

test('the differences of two states are counted and said in one sentence', () => {
  const plan = rooftop();
  expect(said(plan, structuredClone(plan))).toBe('Nothing differs.');
  const moved = moveItem(plan, { id: 'tank', to: [1, 1] });
  expect(said(plan, moved)).toBe('1 item changed.');
  const less = withoutTwo(plan);
  expect(said(less, plan)).toMatch(/^2 items added/);
  expect(said(plan, less)).toMatch(/^2 items taken out/);
  expect(said(plan, { ...plan, title: 'Other' })).toBe('Details of the night changed.');
  expect(said(plan, { ...moved, title: 'Other' })).toBe('1 item changed, and details of the night.');
  const [setup] = plan.setups;
  if (!setup) throw new Error('the rooftop has lost its setup');
  expect(said(plan, removeSetup(plan, { setupId: setup.id }))).toMatch(/1 setup taken out/);
});

test('a setup, two items or the underlay taken away is drastic, one item is not', () => {
  const plan = rooftop();
  expect(isDrastic(plan, moveItem(plan, { id: 'tank', to: [1, 1] }))).toBe(false);
  expect(isDrastic(plan, removeItems(plan, { ids: ['tank'] }))).toBe(false);
  expect(isDrastic(plan, withoutTwo(plan))).toBe(true);
  expect(isDrastic(withoutTwo(plan), plan)).toBe(false);
  expect(isDrastic(plan, { ...plan, setups: [] })).toBe(plan.setups.length > 0);
  const asset = { sha256: 'a'.repeat(64), name: 'roof.png', bytes: 9 };
  const underlay = {
    asset,
    pixels: [10, 10] as [number, number],
    at: [0, 0] as [number, number],
    headingDegrees: 0,
    metresPerPixel: 1,
    strength: 1,
  };
  const drawn = { ...plan, underlay };
  expect(isDrastic(plan, drawn)).toBe(false);
  expect(isDrastic(drawn, { ...drawn, underlay: { ...underlay, strength: 0.5 } })).toBe(false);
  expect(isDrastic(drawn, plan)).toBe(true);
});

test('data is the same whatever the order of its fields, and a field left out is not an empty one', () => {
  expect(sameData({ a: 1, b: [1, { c: 2 }] }, { b: [1, { c: 2 }], a: 1 })).toBe(true);
  expect(sameData({ a: undefined }, { b: undefined })).toBe(false);
  expect(sameData([1, 2], [1])).toBe(false);
  expect(sameData([], {})).toBe(false);
  expect(sameData(null, {})).toBe(false);
});

test('records that say the same stay the objects that they were', () => {
  const plan = rooftop();
  expect(keepRecords(plan, structuredClone(plan))).toBe(plan);
  const moved = moveItem(plan, { id: 'tank', to: [1, 1] });
  const kept = keepRecords(plan, structuredClone(moved));
  expect(kept).toEqual(moved);
  const changed = kept.pieces.filter((piece, index) => piece !== plan.pieces[index]);
  expect(changed.map(({ id }) => id)).toEqual(['tank']);
  expect(kept.kit).toBe(plan.kit);
});

test('words after a title never come twice and never make it too long', () => {
  expect(titleWith('Loft Night', 'copy')).toBe('Loft Night, copy');
  expect(titleWith('Loft Night, copy', 'copy')).toBe('Loft Night, copy');
  expect(titleWith('x'.repeat(80), 'copy')).toHaveLength(80);
});
