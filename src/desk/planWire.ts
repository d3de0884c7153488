import type { Plan } from '../core/plan/schema/plan';

/** The lists of a plan whose records travel one by one. */
const LISTS = ['pieces', 'beats', 'cast', 'gear', 'setups'] as const;
type ListName = (typeof LISTS)[number];

/** A record, or its place in the same list of the plan that was sent before. */
type Travelling<Name extends ListName> = Plan[Name][number] | number;

/**
 * A plan on its way to a worker: only what is not, by identity, in the plan sent before. A clone would make every
 * record new at the other end, and with it every form that is remembered by its record.
 */
export interface PackedPlan {
  readonly rest: Omit<Plan, ListName | 'kit'>;
  /** Null when it is that of the plan sent before. */
  readonly kit: Plan['kit'] | null;
  readonly lists: { readonly [Name in ListName]: readonly Travelling<Name>[] };
}

function packList<Entry extends object>(
  before: readonly Entry[],
  after: readonly Entry[],
): (Entry | number)[] {
  const places = new Map<object, number>(before.map((entry, index) => [entry, index]));
  return after.map((entry) => places.get(entry) ?? entry);
}

/** Packs a plan against the one sent before, or whole against null. */
export function packPlan(before: Plan | null, plan: Plan): PackedPlan {
  const { pieces, beats, cast, gear, setups, kit, ...rest } = plan;
  return {
    rest,
    kit: before?.kit === kit ? null : kit,
    lists: {
      pieces: packList(before?.pieces ?? [], pieces),
      beats: packList(before?.beats ?? [], beats),
      cast: packList(before?.cast ?? [], cast),
      gear: packList(before?.gear ?? [], gear),
      setups: packList(before?.setups ?? [], setups),
    },
  };
}

function unpackList<Entry extends object>(
  before: readonly Entry[],
  packed: readonly (Entry | number)[],
): Entry[] {
  return packed.map((entry) => {
    const found = typeof entry === 'number' ? before[entry] : entry;
    if (!found) throw new Error(`unpackPlan: record ${String(entry)} is not in the plan sent before`);
    return found;
  });
}

/** The plan that was packed; unchanged records are the very objects of the plan received before. */
export function unpackPlan(before: Plan | null, { rest, kit, lists }: PackedPlan): Plan {
  const ownKit = kit ?? before?.kit;
  if (!ownKit) throw new Error('unpackPlan: no kit came, and none came before');
  return {
    ...rest,
    kit: ownKit,
    pieces: unpackList(before?.pieces ?? [], lists.pieces),
    beats: unpackList(before?.beats ?? [], lists.beats),
    cast: unpackList(before?.cast ?? [], lists.cast),
    gear: unpackList(before?.gear ?? [], lists.gear),
    setups: unpackList(before?.setups ?? [], lists.setups),
  };
}
