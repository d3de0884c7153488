import { isInFrame, shotsOf } from '../../continuity/continuityShots';
import type { Plan } from '../../plan/schema/plan';
import { needsOf } from '../times/takes';

/**
 * Who is needed for each setup, by its id: whom the night names, else whoever is in its frame at any look of its span,
 * in the order of the cast.
 */
export function playersBySetup(plan: Plan): ReadonlyMap<string, readonly string[]> {
  return new Map(
    shotsOf(plan).map((shot) => {
      const inFrame = (id: string): boolean => shot.instants.some((_, k) => isInFrame(shot, id, k));
      const named = needsOf(plan, shot.setup.id).cast;
      return [shot.setup.id, named ?? plan.cast.map(({ id }) => id).filter(inFrame)];
    }),
  );
}
