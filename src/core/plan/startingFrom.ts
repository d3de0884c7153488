import type { Plan } from './schema/plan';
import type { Setup } from './schema/setup';

/** What a new plan takes over from another one beside its place, its roof and its kit. */
export interface Keeping {
  readonly gear: boolean;
  readonly cast: boolean;
  readonly setups: boolean;
}

/** A camera that followed somebody who is not taken over keeps its focus at arm's length of the action. */
const LEFT_FOCUS_METRES = 5;

function withoutCast(setup: Setup): Setup {
  return 'follow' in setup.focus ? { ...setup, focus: { metres: LEFT_FOCUS_METRES } } : setup;
}

/**
 * A plan of its own that starts where another one stands: place, ground, kit, set pieces, tapes and underlay are
 * taken over, and of gear, cast and setups what is asked for. Beats stay as long as cast or setups need them.
 * Cables whose ends are both gear stay whole, since all of the gear is taken over or none.
 */
export function startingFrom(plan: Plan, title: string, keeping: Keeping): Plan {
  const { gear, cast, setups } = keeping;
  return {
    ...plan,
    title,
    notes: '',
    beats: cast || setups ? plan.beats : [],
    cast: cast ? plan.cast : [],
    gear: gear ? plan.gear : [],
    setups: setups ? (cast ? plan.setups : plan.setups.map(withoutCast)) : [],
  };
}
