import { expect, test } from 'vitest';
import { moveItem } from '../../../src/core/plan/edits/moveItem';
import { removeItems } from '../../../src/core/plan/edits/removeItems';
import { packPlan, unpackPlan } from '../../../src/desk/planWire';
import { rooftop } from '../core/plan/edits/rooftop';

test('a plan packed against none comes out as it went in', () => {
  const plan = rooftop();
  expect(unpackPlan(null, structuredClone(packPlan(null, plan)))).toEqual(plan);
});

test('after an edit only the changed record travels, and the others stay the objects they were', () => {
  const plan = rooftop();
  const there = unpackPlan(null, structuredClone(packPlan(null, plan)));
  const edited = moveItem(plan, { id: 'tank', to: [1, 1] });
  const packed = packPlan(plan, edited);
  expect(packed.kit).toBeNull();
  expect(packed.lists.pieces.map((entry) => typeof entry)).toEqual(['number', 'object', 'number']);
  expect(packed.lists.gear.every((entry) => typeof entry === 'number')).toBe(true);
  const thereAfter = unpackPlan(there, structuredClone(packed));
  expect(thereAfter).toEqual(edited);
  expect(thereAfter.gear[0]).toBe(there.gear[0]);
  expect(thereAfter.kit).toBe(there.kit);
});

test('a removed record leaves the rest in its order', () => {
  const plan = rooftop();
  const there = unpackPlan(null, structuredClone(packPlan(null, plan)));
  const edited = removeItems(plan, { ids: ['stand'] });
  expect(unpackPlan(there, structuredClone(packPlan(plan, edited)))).toEqual(edited);
});

test('a record that was never sent is our own mistake', () => {
  const plan = rooftop();
  expect(() => unpackPlan(null, packPlan(plan, plan))).toThrow('unpackPlan');
});
