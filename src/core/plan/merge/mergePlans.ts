import { parsePlan } from '../parse';
import type { Plan } from '../schema/plan';
import {
  type Choice,
  type Choices,
  type Difference,
  differencesBetween,
  type EntryDifference,
} from './differences';
import {
  type Apart,
  apart,
  type Entry,
  type ListName,
  listNames,
  type SingleName,
  together,
} from './entries';
import { mergeData } from './mergeData';
import { ordered } from './ordered';
import { withReferences } from './references';
import { asTwo } from './twice';

/** Something that a merge did beside what was chosen, so that the plan holds together. */
export type MergeNote =
  /** The record comes along, against its choice or without one, since `neededBy` cannot be without it. */
  | { readonly kind: 'brought'; readonly entry: Entry; readonly neededBy: Entry }
  /** The difference stays as `mine` has it, since with the rest the plan would not hold together: `why`, a sentence. */
  | { readonly kind: 'refused'; readonly difference: Difference; readonly why: string };

export interface MergedPlan {
  readonly plan: Plan;
  readonly notes: readonly MergeNote[];
}

/** Two plans that are merged, taken apart once. */
interface Sides {
  readonly mine: Plan;
  readonly theirs: Plan;
  readonly own: Apart;
  readonly other: Apart;
  readonly differences: readonly Difference[];
}

const choiceOf = ({ key, standing, suggested }: Difference, choices: Choices): Choice => {
  const choice = choices.get(key) ?? suggested ?? 'mine';
  // What both changed in the same place cannot be as both have it.
  return choice === 'both' && standing !== 'both' ? 'mine' : choice;
};

function chosenEntry({ mine, theirs, base }: EntryDifference, choice: Choice): Entry | null {
  if (choice !== 'both' || !mine || !theirs || !base) return choice === 'theirs' ? theirs : mine;
  const merged = mergeData<unknown>(base.value, mine.value, theirs.value);
  return merged.ok ? ({ ...mine, value: merged.value } as Entry) : mine;
}

/** The records that the choices leave, by key, and what comes along because they need it. */
function chosenEntries(
  sides: Sides,
  choices: Choices,
): { readonly entries: ReadonlyMap<string, Entry>; readonly notes: MergeNote[] } {
  const { own, other, differences } = sides;
  const entries = new Map(own.byKey);
  for (const difference of differences) {
    if (difference.of !== 'entry') continue;
    const entry = chosenEntry(difference, choiceOf(difference, choices));
    if (entry) entries.set(difference.key, entry);
    else entries.delete(difference.key);
  }
  const notes: MergeNote[] = [];
  const asking = [...entries.values()];
  for (let entry = asking.pop(); entry; entry = asking.pop()) {
    const neededBy = entry;
    withReferences(entry, (key, id, needs) => {
      if (!needs || entries.has(key)) return id;
      const lost = own.byKey.get(key) ?? other.byKey.get(key);
      if (!lost) return id;
      entries.set(key, lost);
      asking.push(lost);
      notes.push({ kind: 'brought', entry: lost, neededBy });
      return id;
    });
  }
  return { entries: withoutLost(entries), notes };
}

/** The records without what they can do without and the plan no longer has. */
function withoutLost(entries: ReadonlyMap<string, Entry>): ReadonlyMap<string, Entry> {
  const marks = new Set<string>();
  for (const entry of entries.values())
    if (entry.list === 'cast')
      for (const { id } of entry.value.marks) marks.add(`mark/${entry.value.id}/${id}`);
  const isThere = (key: string): boolean => (key.startsWith('mark/') ? marks : entries).has(key);
  const kept = new Map<string, Entry>();
  for (const [key, entry] of entries) {
    let lacks = false;
    const without = withReferences(entry, (to, id) => {
      if (isThere(to)) return id;
      lacks = true;
      return null;
    });
    // What lacks nothing keeps its identity, and whatever order its fields have.
    if (without) kept.set(key, lacks ? without : entry);
  }
  return kept;
}

function mergedLists(
  sides: Sides,
  choices: Choices,
  entries: ReadonlyMap<string, Entry>,
): Readonly<Record<ListName, readonly Entry[]>> {
  const { own, other, differences } = sides;
  const orders = new Map(
    differences.flatMap((difference) =>
      difference.of === 'order' ? [[difference.list, choiceOf(difference, choices)] as const] : [],
    ),
  );
  const lists: Partial<Record<ListName, readonly Entry[]>> = {};
  for (const list of listNames(own.lists)) {
    const [ours, others] = [own.lists[list], other.lists[list]].map((all) => all.map(({ key }) => key));
    const [lead, rest] = orders.get(list) === 'theirs' ? [others, ours] : [ours, others];
    const keys = ordered(lead, rest, (key) => entries.get(key)?.list === list);
    lists[list] = keys.flatMap((key) => entries.get(key) ?? []);
  }
  return lists as Record<ListName, readonly Entry[]>;
}

function mergedSingles(
  { own, differences }: Sides,
  choices: Choices,
  entries: ReadonlyMap<string, Entry>,
): Readonly<Record<SingleName, unknown>> {
  const singles: Record<SingleName, unknown> = { ...own.singles };
  for (const difference of differences) {
    if (difference.of !== 'single') continue;
    const { name, mine, theirs, base } = difference;
    const choice = choiceOf(difference, choices);
    const both = choice === 'both' ? mergeData(base, mine, theirs) : null;
    if (both?.ok) singles[name] = both.value;
    else if (choice === 'theirs') singles[name] = theirs;
  }
  const order = singles.nightOrder;
  if (Array.isArray(order)) {
    const kept = order.filter((id) => entries.has(`setups/${id}`));
    if (kept.length < order.length) singles.nightOrder = kept.length > 0 ? kept : undefined;
  }
  return singles;
}

/** The plan of some choices as a document, which may not hold together yet. */
function assembled(
  sides: Sides,
  choices: Choices,
): { readonly document: unknown; readonly notes: readonly MergeNote[] } {
  const { mine, theirs, differences } = sides;
  const { entries, notes } = chosenEntries(sides, choices);
  const isAllTheirs = differences.every((difference) => choiceOf(difference, choices) === 'theirs');
  const document = together(
    mergedSingles(sides, choices, entries),
    mergedLists(sides, choices, entries),
    differences.length > 0 && isAllTheirs ? theirs : mine,
  );
  return { document, notes };
}

/**
 * Adds the choices to a plan that is all mine, and leaves out those with which it does not hold together. Many are added at
 * once and halved only where they do not hold: reading the plan once for each would take for ever where theirs differs
 * in everything.
 */
function inHalves(sides: Sides, choices: Choices): MergedPlan {
  const taken = new Map<string, Choice>(sides.differences.map(({ key }) => [key, 'mine']));
  let waiting = sides.differences.filter((difference) => choiceOf(difference, choices) !== 'mine');
  let reached: MergedPlan = { plan: sides.mine, notes: [] };
  let refused: MergeNote[] = [];
  const add = (some: readonly Difference[]): void => {
    for (const difference of some) taken.set(difference.key, choiceOf(difference, choices));
    const { document, notes } = assembled(sides, taken);
    const read = parsePlan(document);
    if (read.ok) {
      reached = { plan: read.value, notes };
      return;
    }
    for (const { key } of some) taken.set(key, 'mine');
    if (some.length === 1) {
      refused.push({ kind: 'refused', difference: some[0], why: read.faults[0].sentence });
      return;
    }
    const half = Math.ceil(some.length / 2);
    add(some.slice(0, half));
    add(some.slice(half));
  };
  for (let before = Number.POSITIVE_INFINITY; waiting.length > 0 && waiting.length < before; ) {
    before = waiting.length;
    refused = [];
    add(waiting);
    waiting = waiting.filter(({ key }) => taken.get(key) === 'mine');
  }
  return { plan: reached.plan, notes: [...reached.notes, ...refused] };
}

/**
 * Merges two plans by choices, by default those that `differencesOf` suggests and `mine` in a conflict. The plan is
 * always one that `parsePlan` reads: what a chosen record cannot be without comes along, what refers to something that
 * is gone and can do without it does, and a choice with which the plan would not hold together is refused; the notes say
 * so. Lists are in the order of `mine`, with what only `theirs` has behind what it stands behind there, unless the order
 * of `theirs` is chosen. All choices `mine` give `mine`, all `theirs` give `theirs`.
 */
export function mergePlans(
  mine: Plan,
  theirs: Plan,
  choices: Choices = new Map(),
  base: Plan | null = null,
): MergedPlan {
  const [own, other] = [apart(mine), apart(theirs)];
  const found = differencesBetween(own, other, base && apart(base));
  const twice = found.filter(
    (difference): difference is EntryDifference =>
      difference.of === 'entry' &&
      difference.base === null &&
      choices.get(difference.key) !== 'mine' &&
      choices.get(difference.key) !== 'theirs' &&
      difference.standing === 'both',
  );
  if (twice.length > 0) {
    return mergePlans(mine, asTwo(mine, theirs, twice), choices, base);
  }
  const sides: Sides = { mine, theirs, own, other, differences: found };
  const { document, notes } = assembled(sides, choices);
  const read = parsePlan(document);
  return read.ok ? { plan: read.value, notes } : inHalves(sides, choices);
}
