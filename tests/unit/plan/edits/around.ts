import { expect } from 'vitest';
import { itemOf } from '../../../../src/core/plan/items';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Plan } from '../../../../src/core/plan/schema/plan';

/** The record of an item, for a match on some of its fields. */
export function recordOf(plan: Plan, id: string): object {
  const record = itemOf(plan, id)?.record;
  if (!record) throw new Error(`${id} is not in the plan`);
  return record;
}

/** Makes an edit and holds it to what all edits owe: the plan that went in is as it was, what comes out can be read. */
export function edited(plan: Plan, edit: (plan: Plan) => Plan): Plan {
  const before = JSON.stringify(plan);
  const after = edit(plan);
  expect(JSON.stringify(plan)).toBe(before);
  expect(parsePlan(after)).toEqual({ ok: true, value: after });
  return after;
}
