import { calledBy } from './named';
import type { Plan } from './schema/plan';

/** What may be without a name; what has no kind is called by a word for all of its list. */
interface Named {
  readonly label: string;
  readonly kind?: string;
}

/** Has all of a list called by something: the list itself where all have names, the same record for one without again. */
function calling<Entry extends Named>(word = ''): (entries: Entry[]) => Entry[] {
  const known = new WeakMap<Entry, Entry>();
  const called = (entry: Entry): Entry => {
    const label = calledBy(entry.label, entry.kind ?? word);
    if (label === entry.label) return entry;
    const found = known.get(entry) ?? { ...entry, label };
    known.set(entry, found);
    return found;
  };
  return (entries) => (entries.every((entry) => called(entry) === entry) ? entries : entries.map(called));
}

const pieces = calling<Plan['pieces'][number]>();
const gear = calling<Plan['gear'][number]>();
const cast = calling<Plan['cast'][number]>('performer');
const beats = calling<Plan['beats'][number]>('beat');
const setups = calling<Plan['setups'][number]>('setup');
const probes = calling<NonNullable<Plan['probes']>[number]>('meter');

const told = new WeakMap<Plan, Plan>();

/**
 * The plan as it is told: what has a name of which nothing can be seen goes by what it is, so that no sentence and no
 * row begins with nothing. For reading alone: what is edited or written is the plan. The same plan gives the same again.
 */
export function withNames(plan: Plan): Plan {
  const found = told.get(plan) ?? {
    ...plan,
    pieces: pieces(plan.pieces),
    gear: gear(plan.gear),
    cast: cast(plan.cast),
    beats: beats(plan.beats),
    setups: setups(plan.setups),
    ...(plan.probes && { probes: probes(plan.probes) }),
  };
  told.set(plan, found);
  told.set(found, found);
  return found;
}
