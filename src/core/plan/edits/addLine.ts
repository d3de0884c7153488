import * as v from 'valibot';
import { castFaults } from '../castChecks';
import { type Line, line as lineSchema } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { freeId } from './freeId';
import { MOST } from './limits';
import { withLines } from './optionalLists';

const sameTwo = (a: Line['pair'], b: Line['pair']): boolean => a.every((id) => b.includes(id));

/** The plan with a list of lines that has one more or another; the plan before where that would say nonsense. */
export function takenLines(plan: Plan, lines: Line[], line: Line): Plan {
  const [one, other] = line.pair;
  const isThere = lines.some(({ id, pair }) => id !== line.id && sameTwo(pair, line.pair));
  if (one === other || isThere || !v.is(lineSchema, line)) return plan;
  const next = withLines(plan, lines);
  return castFaults(next).length > 0 ? plan : next;
}

/**
 * Draws the line between two performers, which cameras keep to one side of. The same plan for somebody that there is
 * not, for a pair that has a line already or is one person, and for a plan with 20 lines.
 */
export function addLine(
  plan: Plan,
  { pair, establishedBy }: { readonly pair: Line['pair']; readonly establishedBy?: string },
): Plan {
  const lines = plan.lines ?? [];
  if (lines.length >= MOST.lines) return plan;
  const line: Line = {
    id: freeId(lines, 'line'),
    pair,
    ...(establishedBy !== undefined && { establishedBy }),
  };
  return takenLines(plan, [...lines, line], line);
}
