import { ordered, sharedOf } from './ordered';
import { saysTheSame } from './saysTheSame';

/** What two made of the same data, or that both changed the same place of it differently. */
export type MergedData<Value> = { readonly ok: true; readonly value: Value } | { readonly ok: false };

type Fields = Readonly<Record<string, unknown>>;

const isFields = (value: unknown): value is Fields =>
  value !== null && typeof value === 'object' && !Array.isArray(value);

/** What an entry of a list is known by: marks, openings and modes by id, accepted findings by setup, cheats by their mark. */
function nameOf(entry: unknown): string | null {
  if (!isFields(entry)) return null;
  const { id, setup, performer, mark } = entry;
  if (typeof id === 'string') return id;
  if (typeof performer === 'string' && typeof mark === 'string') return `${performer}/${mark}`;
  return typeof setup === 'string' ? setup : null;
}

/** A list by the names of its entries; null where one has none or two have the same. */
function named(list: readonly unknown[]): ReadonlyMap<string, unknown> | null {
  const byName = new Map<string, unknown>();
  for (const entry of list) {
    const name = nameOf(entry);
    if (name === null || byName.has(name)) return null;
    byName.set(name, entry);
  }
  return byName;
}

const CONFLICT: MergedData<never> = { ok: false };

/**
 * Merges what two made of the same data: what one alone changed is as that one has it, field by field and, in lists
 * whose entries have names, entry by entry. Fails where both changed the same place and not to the same.
 */
export function mergeData<Value>(base: Value, mine: Value, theirs: Value): MergedData<Value> {
  return merged(base, mine, theirs) as MergedData<Value>;
}

function merged(base: unknown, mine: unknown, theirs: unknown): MergedData<unknown> {
  if (saysTheSame(mine, theirs) || saysTheSame(base, theirs)) return { ok: true, value: mine };
  if (saysTheSame(base, mine)) return { ok: true, value: theirs };
  if (Array.isArray(base) && Array.isArray(mine) && Array.isArray(theirs))
    return mergedList(base, mine, theirs);
  if (!isFields(base) || !isFields(mine) || !isFields(theirs)) return CONFLICT;
  const fields: Record<string, unknown> = {};
  for (const field of new Set([...Object.keys(mine), ...Object.keys(theirs)])) {
    const one = merged(base[field], mine[field], theirs[field]);
    if (!one.ok) return CONFLICT;
    if (one.value !== undefined) fields[field] = one.value;
  }
  return { ok: true, value: fields };
}

function mergedList(
  base: readonly unknown[],
  mine: readonly unknown[],
  theirs: readonly unknown[],
): MergedData<unknown> {
  const [was, own, other] = [named(base), named(mine), named(theirs)];
  if (!was || !own || !other) return CONFLICT;
  const entries = new Map<string, unknown>();
  for (const name of new Set([...own.keys(), ...other.keys()])) {
    const one = merged(was.get(name), own.get(name), other.get(name));
    if (!one.ok) return CONFLICT;
    if (one.value !== undefined) entries.set(name, one.value);
  }
  const [before, ours, others] = [was, own, other].map((byName) => [...byName.keys()]);
  const isMoved = (now: readonly string[]): boolean =>
    !saysTheSame(sharedOf(now, before), sharedOf(before, now));
  if (isMoved(ours) && isMoved(others) && !saysTheSame(sharedOf(ours, others), sharedOf(others, ours)))
    return CONFLICT;
  const [lead, rest] = isMoved(others) ? [others, ours] : [ours, others];
  const names = ordered(lead, rest, (name) => entries.has(name));
  return { ok: true, value: names.map((name) => entries.get(name)) };
}
