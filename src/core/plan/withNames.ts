import { calledBy } from './named';
import type { Beat, Performer } from './schema/cast';
import type { Gear } from './schema/gear';
import type { Piece } from './schema/pieces';
import type { Plan } from './schema/plan';
import type { Setup } from './schema/setup';
import type { ProbeRecord } from './schema/sky';

/** Has all of a list called by something; a list or a record that has not changed gives the same one again. */
function calling<Entry extends { readonly label: string }>(
  kindOf: (entry: Entry) => string,
): (entries: Entry[]) => Entry[] {
  const lists = new WeakMap<Entry[], Entry[]>();
  const records = new WeakMap<Entry, Entry>();
  const called = (entry: Entry): Entry => {
    const label = calledBy(entry.label, kindOf(entry));
    if (label === entry.label) return entry;
    const found = records.get(entry) ?? { ...entry, label };
    records.set(entry, found);
    return found;
  };
  return (entries) => {
    const known = lists.get(entries);
    if (known) return known;
    const all = entries.map(called);
    const found = all.every((entry, k) => entry === entries[k]) ? entries : all;
    lists.set(entries, found);
    return found;
  };
}

const pieces = calling<Piece>(({ kind }) => kind);
const gear = calling<Gear>(({ kind }) => kind);
const cast = calling<Performer>(() => 'performer');
const beats = calling<Beat>(() => 'beat');
const setups = calling<Setup>(() => 'setup');
const probes = calling<ProbeRecord>(() => 'meter');

const LISTS = ['pieces', 'cast', 'gear', 'beats', 'setups', 'probes'] as const;

const known = new WeakMap<Plan, Plan>();

/**
 * The plan as it is told: what has a name of which nothing can be seen goes by what it is, so that no sentence and no
 * row begins with nothing. The same plan where all can be seen. For reading alone: what is edited or written is the plan.
 */
export function withNames(plan: Plan): Plan {
  const before = known.get(plan);
  if (before) return before;
  const told: Plan = {
    ...plan,
    pieces: pieces(plan.pieces),
    cast: cast(plan.cast),
    gear: gear(plan.gear),
    beats: beats(plan.beats),
    setups: setups(plan.setups),
    ...(plan.probes && { probes: probes(plan.probes) }),
  };
  const found = LISTS.every((list) => told[list] === plan[list]) ? plan : told;
  known.set(plan, found);
  known.set(found, found);
  return found;
}
