import { dropEstablishing, dropPeople } from './edits/dropPeople';
import { dropReferences } from './edits/dropReferences';
import type { Plan } from './schema/plan';

/** What a new plan takes over from another one beside its place, its roof and its kit. */
export interface Keeping {
  readonly gear: boolean;
  readonly cast: boolean;
  readonly setups: boolean;
}

/**
 * A plan of its own that starts where another one stands: place, ground, kit, set pieces, tapes and underlay are
 * taken over, and of gear, cast and setups what is asked for. Beats stay as long as cast or setups need them.
 * Cables whose ends are both gear stay whole, since all of the gear is taken over or none; setups let go of who and
 * what is not (see `dropReferences`), and so do passes and lines.
 */
export function startingFrom(plan: Plan, title: string, keeping: Keeping): Plan {
  const { gear, cast, setups } = keeping;
  const lost = {
    performers: new Map(cast ? [] : plan.cast.map((performer) => [performer.id, performer])),
    tracks: new Set(gear ? [] : plan.gear.map(({ id }) => id)),
  };
  const left: Plan = {
    ...plan,
    title,
    notes: '',
    beats: cast || setups ? plan.beats : [],
    cast: cast ? plan.cast : [],
    gear: gear ? plan.gear : [],
    setups: setups ? plan.setups.map((setup) => dropReferences(setup, lost)) : [],
  };
  const peopled = cast ? left : dropPeople(left, () => true);
  return setups ? peopled : dropEstablishing(peopled, () => true);
}
