import type { Line, Pass } from '../schema/cast';
import type { Plan } from '../schema/plan';
import type { Cheat, Setup } from '../schema/setup';

/** The plan with other passes; where there are none the field is left out. The same plan for the same list. */
export function withPasses(plan: Plan, passes: Pass[]): Plan {
  if (passes === plan.passes) return plan;
  const { passes: before, ...rest } = plan;
  if (passes.length === 0) return before === undefined ? plan : rest;
  return { ...plan, passes };
}

/** The plan with other lines; where there are none the field is left out. The same plan for the same list. */
export function withLines(plan: Plan, lines: Line[]): Plan {
  if (lines === plan.lines) return plan;
  const { lines: before, ...rest } = plan;
  if (lines.length === 0) return before === undefined ? plan : rest;
  return { ...plan, lines };
}

/** The setup with other cheats; where there are none the field is left out. The same setup for the same list. */
export function withCheats(setup: Setup, cheats: Cheat[]): Setup {
  if (cheats === setup.cheats) return setup;
  const { cheats: before, ...rest } = setup;
  if (cheats.length === 0) return before === undefined ? setup : rest;
  return { ...setup, cheats };
}

/** Whether there is nothing in a record or a list, or nothing at all. */
export const isEmpty = (value: unknown): boolean =>
  value === undefined || (typeof value === 'object' && value !== null && Object.keys(value).length === 0);

/** The entries of a list that pass; the same list where all of them do. */
export function keptOf<Entry>(list: Entry[], passes: (entry: Entry) => boolean): Entry[] {
  const kept = list.filter(passes);
  return kept.length === list.length ? list : kept;
}
