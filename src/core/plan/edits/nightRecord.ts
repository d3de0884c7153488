import * as v from 'valibot';
import { type NightPlan, night as nightSchema } from '../schema/night';
import type { Plan } from '../schema/plan';
import { orSame } from './motion';
import { isEmpty, keptOf } from './optionalLists';

/** Fields to set; undefined takes one away. */
export type Patch<Fields> = { readonly [Field in keyof Fields]?: Fields[Field] | undefined };

/** A record with some fields set, and without those that are set to undefined, in the order that they had. */
export function patched<Fields extends object>(before: Fields, patch: Patch<Fields>): Fields {
  const all: [string, unknown][] = Object.entries({ ...before, ...patch });
  return Object.fromEntries(all.filter(([, value]) => value !== undefined)) as Fields;
}

/**
 * The plan with another night, without what is empty in it and without the field where nothing is left. What the schema
 * refuses changes nothing; the same plan for the same night.
 */
export function withNight(plan: Plan, next: NightPlan): Plan {
  const { night: before, ...rest } = plan;
  const full = Object.fromEntries(Object.entries(next).filter(([, value]) => !isEmpty(value)));
  if (isEmpty(full)) return before === undefined ? plan : rest;
  const read = v.safeParse(nightSchema, full);
  if (!read.success) return plan;
  return before && orSame(before, read.output) === before ? plan : { ...plan, night: read.output };
}

/** A list with the entry of a key changed, put at its end where it was not there, or left out where only its key is left. */
export function withEntry<Entry extends object>(
  list: readonly Entry[],
  isIt: (entry: Entry) => boolean,
  fresh: Entry,
  patch: Patch<Entry>,
): Entry[] {
  const before = list.find(isIt);
  const after = patched(before ?? fresh, patch);
  if (Object.keys(after).length <= Object.keys(fresh).length) return list.filter((entry) => !isIt(entry));
  return before ? list.map((entry) => (isIt(entry) ? after : entry)) : [...list, after];
}

/** The plan's night without what names setups that are gone. */
export function nightWithoutSetups(plan: Plan, isGone: (id: string) => boolean): Plan {
  const { night } = plan;
  if (!night) return plan;
  return withNight(plan, {
    ...night,
    ...(night.order && { order: keptOf(night.order, (id) => !isGone(id)) }),
    ...(night.setups && { setups: keptOf(night.setups, ({ setup }) => !isGone(setup)) }),
  });
}

/** The plan's night without what names performers that are lost; whom a setup's frame has is then counted again. */
export function nightWithoutPeople(plan: Plan, isLost: (id: string) => boolean): Plan {
  const { night } = plan;
  if (!night) return plan;
  const setups = night.setups?.flatMap((entry) => {
    if (!entry.cast?.some(isLost)) return [entry];
    const cast = entry.cast.filter((id) => !isLost(id));
    const { cast: _, ...rest } = entry;
    if (cast.length > 0) return [{ ...rest, cast }];
    return Object.keys(rest).length > 1 ? [rest] : [];
  });
  return withNight(plan, {
    ...night,
    ...(setups && { setups }),
    ...(night.cast && { cast: keptOf(night.cast, ({ performer }) => !isLost(performer)) }),
  });
}
