import { parsePlan } from '../parse';
import type { Plan } from '../schema/plan';
import type { EntryDifference } from './differences';
import { type Apart, apart, type Entry, keyOf, type ListName, listNames, together } from './entries';
import { withReferences } from './references';
import { saysTheSame } from './saysTheSame';

/** Ids have at most 40 characters, labels at most 80. */
const STEM_CHARACTERS = 36;
const LABEL_CHARACTERS = 72;

const idOf = ({ value }: Entry): string => ('id' in value ? value.id : '');

/** What somebody else's thing is called beside one's own of the same name. */
const theirLabel = (label: string): string => `${label.slice(0, LABEL_CHARACTERS)}, theirs`;

/** A record under another id, and named as theirs where it has a name. */
function renamed(entry: Entry, id: string): Entry {
  const value = {
    ...entry.value,
    id,
    ...('label' in entry.value &&
      entry.value.label !== undefined && { label: theirLabel(entry.value.label) }),
  };
  return { ...entry, key: keyOf(entry.list, id), value } as Entry;
}

/** The first free id behind one, or that under which the same thing came already. */
function idBeside(entry: Entry, own: Apart, other: Apart, taken: ReadonlySet<string>): string {
  const stem = idOf(entry).slice(0, STEM_CHARACTERS).replace(/-+$/, '');
  for (let count = 2; ; count += 1) {
    const id = `${stem}-${count}`;
    const key = keyOf(entry.list, id);
    if (other.byKey.has(key) || taken.has(key)) continue;
    const there = own.byKey.get(key);
    if (!there) return id;
    const wanted = renamed(entry, id);
    if (there.list !== entry.list) continue;
    if ('label' in there.value && 'label' in wanted.value && there.value.label !== undefined) {
      if (there.value.label === wanted.value.label) return id;
    } else if (saysTheSame(there.value, wanted.value)) return id;
  }
}

/**
 * The plan `theirs` with those things under other ids that `mine` has something else under, and all that refers to them.
 * Where they came into `mine` before, they get the ids that they have there.
 */
export function asTwo(mine: Plan, theirs: Plan, twice: readonly EntryDifference[]): Plan {
  const [own, other] = [apart(mine), apart(theirs)];
  const ids = new Map<string, string>();
  const taken = new Set<string>();
  for (const { key, theirs: entry } of twice) {
    if (!entry) continue;
    const id = idBeside(entry, own, other, taken);
    ids.set(key, id);
    taken.add(keyOf(entry.list, id));
  }
  const moved = (entry: Entry): Entry => {
    const id = ids.get(entry.key);
    const named = id === undefined ? entry : renamed(entry, id);
    return withReferences(named, (key, before) => ids.get(key) ?? before) ?? named;
  };
  const lists: Partial<Record<ListName, readonly Entry[]>> = {};
  for (const list of listNames(other.lists)) lists[list] = other.lists[list].map(moved);
  const { nightOrder } = other.singles;
  const singles = {
    ...other.singles,
    ...(Array.isArray(nightOrder) && {
      nightOrder: nightOrder.map((id: string) => ids.get(`setups/${id}`) ?? id),
    }),
  };
  const read = parsePlan(together(singles, lists as Record<ListName, readonly Entry[]>, theirs));
  if (!read.ok) throw new Error(`asTwo: ${read.faults[0].sentence}`);
  return read.value;
}
