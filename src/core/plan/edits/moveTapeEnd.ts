import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { sameSpot, tidySpot } from './tidy';

/** Moves one end of a tape measure to [x, z], metres. */
export function moveTapeEnd(
  plan: Plan,
  args: { readonly id: string; readonly end: 'from' | 'to'; readonly to: Spot },
): Plan {
  const tapes = plan.tapes ?? [];
  const index = tapes.findIndex(({ id }) => id === args.id);
  const tape = tapes[index];
  const to = tidySpot(args.to);
  if (!tape || sameSpot(tape[args.end], to)) return plan;
  return { ...plan, tapes: tapes.with(index, { ...tape, [args.end]: to }) };
}
