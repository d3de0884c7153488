import * as v from 'valibot';
import type { Plan } from '../schema/plan';
import { type CameraKey, type Setup, setup as setupSchema } from '../schema/setup';
import { setupFaults } from '../setupChecks';
import { editSetup } from './editRecord';

/** When a key is, on the action's clock. */
const momentIn = (plan: Plan, { atSeconds, beat }: CameraKey): number =>
  atSeconds + (plan.beats.find(({ id }) => id === beat)?.atSeconds ?? 0);

/**
 * Changes the keys of a setup's move, and its ease. Keys are put in the order of their moments. What the schema
 * refuses, two keys at one moment, or a key on a beat that the plan does not have changes nothing.
 */
export function changeKeys(
  plan: Plan,
  args: {
    readonly setupId: string;
    readonly change: (keys: readonly CameraKey[]) => readonly CameraKey[];
    readonly ease?: Setup['move']['ease'];
  },
): Plan {
  const changed = editSetup(plan, args.setupId, (setup) => {
    const { keys: before, ease } = setup.move;
    const after = args.change(before);
    const isSame =
      after === before || (after.length === before.length && after.every((key, k) => key === before[k]));
    if (isSame && (args.ease === undefined || args.ease === ease)) return setup;
    const keys = after.toSorted((a, b) => momentIn(plan, a) - momentIn(plan, b));
    const next = { ...setup, move: { ease: args.ease ?? ease, keys } };
    return v.is(setupSchema, next) ? next : setup;
  });
  return changed === plan || setupFaults(changed).length > 0 ? plan : changed;
}

/** Puts a key among those of a setup. */
export const addKey = (plan: Plan, args: { readonly setupId: string; readonly key: CameraKey }): Plan =>
  changeKeys(plan, { setupId: args.setupId, change: (keys) => [...keys, args.key] });

/** Changes fields of one key; undefined takes out one that may be left out. */
export function setKey(
  plan: Plan,
  args: {
    readonly setupId: string;
    readonly keyIndex: number;
    readonly patch: { readonly [Field in keyof CameraKey]?: CameraKey[Field] | undefined };
  },
): Plan {
  return changeKeys(plan, {
    setupId: args.setupId,
    change: (keys) => {
      const key = keys[args.keyIndex];
      if (!key) return keys;
      const entries = Object.entries({ ...key, ...args.patch }).filter(([, value]) => value !== undefined);
      const next = Object.fromEntries(entries);
      if (JSON.stringify(next) === JSON.stringify(key)) return keys;
      return keys.map((each, k) => (k === args.keyIndex ? ({ ...next } as CameraKey) : each));
    },
  });
}

/** Takes a key out of a setup's move; the last one stays. */
export const removeKey = (plan: Plan, args: { readonly setupId: string; readonly keyIndex: number }): Plan =>
  changeKeys(plan, {
    setupId: args.setupId,
    change: (keys) => (keys.length > 1 && keys[args.keyIndex] ? keys.toSpliced(args.keyIndex, 1) : keys),
  });
