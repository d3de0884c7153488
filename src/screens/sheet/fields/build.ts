import { editRecord } from '../../../core/plan/edits/editRecord';
import { type Patch, reshapeItem } from '../../../core/plan/edits/reshapeItem';
import { parsePlan } from '../../../core/plan/parse';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FieldSpec } from './types';

/**
 * Takes fields of an item to new values, `undefined` out of it; what stands on it stays on its top. A value that the
 * schema refuses is put in all the same: whoever makes the edit hears what would work.
 */
export function reshaped(plan: Plan, id: string, patch: Patch): Plan {
  const after = reshapeItem(plan, { id, patch });
  if (after !== plan) return after;
  const put = <Entry extends object>(entry: Entry): Entry => ({ ...entry, ...patch });
  const refused = editRecord(plan, id, { piece: put, cast: put, gear: put });
  return parsePlan(refused).ok ? plan : refused;
}

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

/** The tilt of what faces somewhere, up-positive. */
export const tiltField = (id: string, tiltDegrees: number): FieldSpec => ({
  form: 'number',
  label: 'tilt',
  value: tiltDegrees,
  unit: '°',
  decimals: 1,
  change: (plan, value) => reshaped(plan, id, { tiltDegrees: value }),
});
