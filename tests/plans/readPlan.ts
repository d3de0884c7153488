import { readFileSync } from 'node:fs';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';

/** The text of a file, by its path from the top of the repository, where all tests and benchmarks run, bundled or not. */
export const textOf = (path: string): string => readFileSync(path, 'utf8');

/** A plan file of the repository as a plan; throws with what is wrong in it. */
export function readPlan(path: string): Plan {
  const parsed = parsePlanText(textOf(path));
  if (!parsed.ok) throw new Error(parsed.faults.map((fault) => fault.sentence).join('\n'));
  return parsed.value;
}

export const DEMO = 'assets/loft-night.plan.json';
export const PAPER = 'tests/plans/paper.plan.json';
export const CROWDED = 'tests/plans/crowded.plan.json';
