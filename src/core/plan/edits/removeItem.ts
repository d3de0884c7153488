import { hypot } from '../../units/steadyMath';
import type { Performer } from '../schema/cast';
import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';
import { carrierOf } from './anchorOf';

/** Focus stays at the distance that it had to the first mark: a setup cannot follow somebody who is not there. */
function unfollow(setup: Setup, performer: Performer): Setup {
  if (!('follow' in setup.focus) || setup.focus.follow !== performer.id) return setup;
  const mark = performer.marks[0];
  const key = setup.move.keys[0];
  const metres = mark && key ? hypot(mark.at[0] - key.position[0], mark.at[1] - key.position[2]) : 0;
  return { ...setup, focus: { metres: Math.max(0.1, metres) } };
}

/**
 * Takes an item out of the plan, and with a stand all that it carries, so that no reference leads nowhere.
 * Setups that follow a removed performer keep their focus at that distance.
 */
export function removeItem(plan: Plan, { id }: { readonly id: string }): Plan {
  const gone = (entry: { readonly id: string }): boolean =>
    entry.id === id || carrierOf(plan, entry.id) === id;
  const pieces = plan.pieces.filter((piece) => !gone(piece));
  const gear = plan.gear.filter((entry) => !gone(entry));
  const performer = plan.cast.find((entry) => entry.id === id);
  if (performer) {
    return {
      ...plan,
      cast: plan.cast.filter((entry) => entry !== performer),
      setups: plan.setups.map((setup) => unfollow(setup, performer)),
    };
  }
  if (pieces.length === plan.pieces.length && gear.length === plan.gear.length) return plan;
  return { ...plan, pieces, gear };
}
