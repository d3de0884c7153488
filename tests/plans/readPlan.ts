import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';

const HOUSE = new URL('../../', import.meta.url);

/** The text of a file, by its path from the top of the repository. */
export const textOf = (path: string): string => readFileSync(fileURLToPath(new URL(path, HOUSE)), 'utf8');

/** A plan file of the repository as a plan; throws with what is wrong in it. */
export function readPlan(path: string): Plan {
  const parsed = parsePlanText(textOf(path));
  if (!parsed.ok) throw new Error(parsed.faults.map((fault) => fault.sentence).join('\n'));
  return parsed.value;
}

export const DEMO = 'assets/loft-night.plan.json';
export const PAPER = 'tests/plans/paper.plan.json';
export const CROWDED = 'tests/plans/crowded.plan.json';
