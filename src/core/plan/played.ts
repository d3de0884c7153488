import type { Mark, Performer } from './schema/cast';
import type { Plan } from './schema/plan';
import type { Cheat, Setup } from './schema/setup';

const isAt = (mark: Mark, { at, headingDegrees }: Cheat): boolean =>
  mark.at[0] === at[0] &&
  mark.at[1] === at[1] &&
  (headingDegrees === undefined || mark.headingDegrees === headingDegrees);

function cheated(performer: Performer, cheats: readonly Cheat[]): Performer {
  const own = new Map(
    cheats.filter((cheat) => cheat.performer === performer.id).map((cheat) => [cheat.mark, cheat]),
  );
  if (own.size === 0) return performer;
  let changed = false;
  const marks = performer.marks.map((mark): Mark => {
    const cheat = own.get(mark.id);
    if (!cheat || isAt(mark, cheat)) return mark;
    changed = true;
    if (cheat.headingDegrees === undefined) return { ...mark, at: cheat.at };
    // Whoever is turned for a setup faces that way, whatever the master has them face.
    const { faces: _, ...turned } = mark;
    return { ...turned, at: cheat.at, headingDegrees: cheat.headingDegrees };
  });
  return changed ? { ...performer, marks } : performer;
}

const playedKept = new WeakMap<Plan, WeakMap<readonly Cheat[], Plan>>();
const castKept = new WeakMap<Plan['cast'], WeakMap<readonly Cheat[], Plan['cast']>>();

function castOf({ cast }: Plan, cheats: readonly Cheat[]): Plan['cast'] {
  const byCheats = castKept.get(cast) ?? new WeakMap<readonly Cheat[], Plan['cast']>();
  castKept.set(cast, byCheats);
  const known = byCheats.get(cheats);
  if (known) return known;
  const performers = cast.map((performer) => cheated(performer, cheats));
  const made = performers.every((performer, k) => performer === cast[k]) ? cast : performers;
  byCheats.set(cheats, made);
  return made;
}

/**
 * The plan as one setup plays it: with its cheated marks in the place of the master's. The same plan where nothing is
 * cheated, the same object for the same plan and setup, and itself once more when asked again.
 */
export function played(plan: Plan, { cheats }: Pick<Setup, 'cheats'>): Plan {
  if (!cheats || cheats.length === 0) return plan;
  const byCheats = playedKept.get(plan) ?? new WeakMap<readonly Cheat[], Plan>();
  playedKept.set(plan, byCheats);
  const known = byCheats.get(cheats);
  if (known) return known;
  const cast = castOf(plan, cheats);
  const made = cast === plan.cast ? plan : { ...plan, cast };
  byCheats.set(cheats, made);
  return made;
}
