import type { Mark, Performer } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { changed } from './motion';
import { nightWithoutPeople } from './nightRecord';
import { keptOf, withLines, withPasses } from './optionalLists';

/** What a mark turns to, without whoever is lost: the body then turns by its heading, the head ahead. */
function unturned(mark: Mark, isLost: (id: string) => boolean): Mark {
  let left = mark;
  for (const field of ['faces', 'looks', 'facesOnTheWay', 'looksOnTheWay'] as const) {
    const to = left[field];
    if (!to || !('who' in to) || !isLost(to.who)) continue;
    const { [field]: _, ...rest } = left;
    left = rest;
  }
  return left;
}

/** A performer who turns to nobody that is lost; the same performer where they turned to none of them. */
export function withoutTurning(performer: Performer, isLost: (id: string) => boolean): Performer {
  const marks = changed(performer.marks, (mark) => unturned(mark, isLost));
  return marks === performer.marks ? performer : { ...performer, marks };
}

/**
 * A plan in which nothing but the cast itself and the setups (see `dropReferences`) names performers that are lost:
 * their passes and lines go, the night does without them, and nobody turns to them any more. The same plan where nothing did.
 */
export function dropPeople(plan: Plan, isLost: (id: string) => boolean): Plan {
  const cast = changed(plan.cast, (performer) => withoutTurning(performer, isLost));
  const turned = cast === plan.cast ? plan : { ...plan, cast };
  const passed = plan.passes
    ? withPasses(
        turned,
        keptOf(plan.passes, ({ from, to }) => !isLost(from) && !isLost(to)),
      )
    : turned;
  const lined = plan.lines
    ? withLines(
        passed,
        keptOf(plan.lines, ({ pair }) => !pair.some(isLost)),
      )
    : passed;
  return nightWithoutPeople(lined, isLost);
}

/** A plan whose lines are established by none of the setups that are lost. */
export function dropEstablishing(plan: Plan, isLost: (id: string) => boolean): Plan {
  if (!plan.lines) return plan;
  const lines = changed(plan.lines, (line) => {
    const { establishedBy, ...rest } = line;
    return establishedBy !== undefined && isLost(establishedBy) ? rest : line;
  });
  return withLines(plan, lines);
}
