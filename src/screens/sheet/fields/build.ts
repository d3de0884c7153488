import { editRecord } from '../../../core/plan/edits/editRecord';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FieldSpec } from './types';

/** Takes fields of an item to new values, `undefined` out of it; the schema has the last word. */
export const reshaped = (plan: Plan, id: string, patch: Readonly<Record<string, unknown>>): Plan => {
  const gone = new Set(Object.keys(patch).filter((key) => patch[key] === undefined));
  const reshape = <Entry extends object>(entry: Entry): Entry => {
    const kept = Object.entries({ ...entry, ...patch }).filter(([key]) => !gone.has(key));
    return Object.fromEntries(kept) as Entry;
  };
  return editRecord(plan, id, { piece: reshape, cast: reshape, gear: reshape });
};

type Labels<Value extends string> = readonly (readonly [value: Value, word: string])[];

/** A choice whose new value is one of its own. */
export function choice<Value extends string>(
  label: string,
  value: Value,
  choices: Labels<Value>,
  change: (plan: Plan, value: Value) => Plan,
): FieldSpec {
  return {
    form: 'choice',
    label,
    value,
    choices,
    change: (plan, text) => {
      const found = choices.find(([each]) => each === text);
      return found ? change(plan, found[0]) : plan;
    },
  };
}

/** Choices that are called what they are. */
export const named = <Value extends string>(values: readonly Value[]): Labels<Value> =>
  values.map((value) => [value, value] as const);

/** The fields of a box: width, height, depth. */
export function sizeFields(id: string, size: readonly [number, number, number]): FieldSpec[] {
  return (['width', 'height', 'depth'] as const).map(
    (label, axis): FieldSpec => ({
      form: 'length',
      label,
      metres: size[axis] ?? 0,
      change: (plan, metres) => reshaped(plan, id, { size: size.with(axis, metres) }),
    }),
  );
}

/** A length that is one field of the record. */
export function lengthOf(id: string, key: string, label: string, metres: number, small = false): FieldSpec {
  return {
    form: 'length',
    label,
    metres,
    small,
    change: (plan, value) => reshaped(plan, id, { [key]: value }),
  };
}

/** A whole number that is one field of the record. */
export function countOf(id: string, key: string, label: string, value: number): FieldSpec {
  return {
    form: 'number',
    label,
    value,
    change: (plan, typed) => reshaped(plan, id, { [key]: typed }),
  };
}
