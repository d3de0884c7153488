import type { Plan } from '../schema/plan';
import { type Apart, apart, type Entry, type ListName, listNames, SINGLES, type SingleName } from './entries';
import { mergeData } from './mergeData';
import { sharedOf } from './ordered';
import { saysTheSame } from './saysTheSame';

/** Whose state of a thing is taken; `both` where what the two did goes together. */
export type Choice = 'mine' | 'theirs' | 'both';

/**
 * Who changed a thing since the plan that both began with: one, both without meeting (`both`), both the same place of it
 * (`conflict`); `open` where that plan is not known.
 */
export type Standing = 'mine' | 'theirs' | 'both' | 'conflict' | 'open';

interface Common {
  /** By which a choice is kept: the same from one comparison to the next. */
  readonly key: string;
  readonly standing: Standing;
  /** What is taken where nobody chooses; null for a conflict. */
  readonly suggested: Choice | null;
}

/** A record that one of two plans lacks, or that they have differently. */
export interface EntryDifference extends Common {
  readonly of: 'entry';
  readonly mine: Entry | null;
  readonly theirs: Entry | null;
  readonly base: Entry | null;
}

/** Something that a plan has once: its place, its sky. What it leaves out is `undefined`. */
export interface SingleDifference extends Common {
  readonly of: 'single';
  readonly name: SingleName;
  readonly mine: unknown;
  readonly theirs: unknown;
  readonly base: unknown;
}

/** A list that has what both have in another order. */
export interface OrderDifference extends Common {
  readonly of: 'order';
  readonly list: ListName;
  /** Keys of what both have, as each has them. */
  readonly mine: readonly string[];
  readonly theirs: readonly string[];
}

export type Difference = EntryDifference | SingleDifference | OrderDifference;

/** Who changed what, and what is taken of it unless somebody chooses. */
function standingOf(
  hasBase: boolean,
  base: unknown,
  mine: unknown,
  theirs: unknown,
): Pick<Common, 'standing' | 'suggested'> {
  if (!hasBase) return { standing: 'open', suggested: 'mine' };
  if (saysTheSame(base, mine)) return { standing: 'theirs', suggested: 'theirs' };
  if (saysTheSame(base, theirs)) return { standing: 'mine', suggested: 'mine' };
  // Two things that came under one id: each can stay, under an id of its own.
  const isTwice = base === undefined && mine !== undefined && theirs !== undefined;
  if (isTwice || mergeData(base, mine, theirs).ok) return { standing: 'both', suggested: 'both' };
  return { standing: 'conflict', suggested: null };
}

function entryDifference(
  key: string,
  own: Entry | undefined,
  other: Entry | undefined,
  was: Entry | undefined,
  hasBase: boolean,
): EntryDifference | null {
  if (own?.list === other?.list && saysTheSame(own?.value, other?.value)) return null;
  const isOtherList = own && other && own.list !== other.list;
  const standing = standingOf(
    hasBase,
    isOtherList ? was : was?.value,
    isOtherList ? own : own?.value,
    isOtherList ? other : other?.value,
  );
  const isUnmergeable = standing.standing === 'both' && !canBeTwice(own, other, was);
  return {
    of: 'entry',
    key,
    ...(isUnmergeable ? { standing: 'conflict', suggested: null } : standing),
    mine: own ?? null,
    theirs: other ?? null,
    base: was ?? null,
  };
}

/** Lists whose records may stay beside others under ids of their own; the rest is known by what it is about. */
const COUNTED: ReadonlySet<ListName> = new Set<ListName>([
  'pieces',
  'cast',
  'gear',
  'beats',
  'setups',
  'passes',
  'lines',
  'tapes',
  'probes',
  'frameLines',
  'areas',
  'bodies',
  'lenses',
  'heads',
  'stands',
  'waysOut',
]);

function canBeTwice(own: Entry | undefined, other: Entry | undefined, was: Entry | undefined): boolean {
  return was !== undefined || !own || !other || (COUNTED.has(own.list) && COUNTED.has(other.list));
}

function entryDifferences(own: Apart, other: Apart, was: Apart | null): EntryDifference[] {
  const keys = new Set([...own.byKey.keys(), ...other.byKey.keys()]);
  return [...keys].flatMap(
    (key) =>
      entryDifference(key, own.byKey.get(key), other.byKey.get(key), was?.byKey.get(key), was !== null) ?? [],
  );
}

function singleDifferences(own: Apart, other: Apart, was: Apart | null): SingleDifference[] {
  return SINGLES.flatMap((name): SingleDifference[] => {
    const [mine, theirs, base] = [own.singles[name], other.singles[name], was?.singles[name]];
    if (saysTheSame(mine, theirs)) return [];
    const found = standingOf(was !== null, base, mine, theirs);
    // Of what a plan has once there are no two.
    const isTwice = found.standing === 'both' && base === undefined;
    const standing = isTwice ? ({ standing: 'conflict', suggested: null } as const) : found;
    return [{ of: 'single', key: name, name, ...standing, mine, theirs, base }];
  });
}

const keysOf = (entries: readonly Entry[]): readonly string[] => entries.map(({ key }) => key);

function orderDifferences(own: Apart, other: Apart, was: Apart | null): OrderDifference[] {
  return listNames(own.lists).flatMap((list): OrderDifference[] => {
    const [ours, others] = [keysOf(own.lists[list]), keysOf(other.lists[list])];
    const [mine, theirs] = [sharedOf(ours, others), sharedOf(others, ours)];
    if (saysTheSame(mine, theirs)) return [];
    const base = was && sharedOf(keysOf(was.lists[list]), mine);
    const inBase = (keys: readonly string[]): readonly string[] => (base ? sharedOf(keys, base) : keys);
    const standing = standingOf(base !== null, base, inBase(mine), inBase(theirs));
    return [{ of: 'order', key: `order/${list}`, list, ...standing, mine, theirs }];
  });
}

/**
 * In what two plans differ, record by record, by their ids. With the plan that both began with, `base`, each says who
 * changed it: what one alone changed is suggested as that one has it, and what both changed in the same place is a
 * conflict. Without it nothing is suggested but what is there, `mine`.
 */
export function differencesOf(mine: Plan, theirs: Plan, base: Plan | null = null): readonly Difference[] {
  return differencesBetween(apart(mine), apart(theirs), base && apart(base));
}

/** The same of plans that are taken apart already. */
export function differencesBetween(own: Apart, other: Apart, was: Apart | null): readonly Difference[] {
  return [
    ...singleDifferences(own, other, was),
    ...entryDifferences(own, other, was),
    ...orderDifferences(own, other, was),
  ];
}

/** Choices by the keys of differences. */
export type Choices = ReadonlyMap<string, Choice>;

/** What is suggested of all differences; conflicts as `inConflict` says, without a choice where it is null. */
export function suggestedChoices(
  differences: readonly Difference[],
  inConflict: Exclude<Choice, 'both'> | null = null,
): Choices {
  return new Map(
    differences.flatMap(({ key, suggested }): (readonly [string, Choice])[] => {
      const choice = suggested ?? inConflict;
      return choice === null ? [] : [[key, choice]];
    }),
  );
}

/** Which choices a difference offers. */
export const choicesOf = ({ standing }: Difference): readonly Choice[] =>
  standing === 'both' ? ['mine', 'theirs', 'both'] : ['mine', 'theirs'];
