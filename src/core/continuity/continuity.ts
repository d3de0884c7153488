import type { Plan } from '../plan/schema/plan';
import { type CheatFinding, cheatFindings } from './cheats';
import { type DirtySingleFinding, dirtyFindings } from './dirty';
import { type EyelineFinding, eyelineFindings } from './eyelines';
import { type HeadroomFinding, headroomFindings } from './headroom';
import { type KeySideFinding, keySides } from './keySide';
import { type LineFinding, lineFindings } from './line';
import { neighbourFindings, type SizeChangeFinding, type ThirtyDegreesFinding } from './neighbours';
import { type ScreenDirectionFinding, screenDirectionFindings } from './screenDirection';
import { type MatchingSinglesFinding, matchingSingles } from './singles';
import type { Standing } from './types';

/** Whatever is found of how setups cut together. */
export type ContinuityFinding =
  | LineFinding
  | EyelineFinding
  | ScreenDirectionFinding
  | ThirtyDegreesFinding
  | SizeChangeFinding
  | MatchingSinglesFinding
  | DirtySingleFinding
  | HeadroomFinding
  | KeySideFinding
  | CheatFinding;

/** What is found of one setup, worst first. */
export interface SetupContinuity {
  readonly setupId: string;
  readonly findings: readonly ContinuityFinding[];
}

/** Every check, in the order in which findings of one standing are told. */
const CHECKS: readonly ((plan: Plan) => readonly ContinuityFinding[])[] = [
  lineFindings,
  screenDirectionFindings,
  eyelineFindings,
  neighbourFindings,
  matchingSingles,
  dirtyFindings,
  headroomFindings,
  keySides,
  cheatFindings,
];

const WORST_FIRST: readonly Standing[] = ['breaks', 'said', 'holds'];

/** Findings worst first; those that stand alike stay in their order. */
export const worstFirst = <Finding extends { readonly standing: Standing }>(
  findings: readonly Finding[],
): readonly Finding[] =>
  findings.toSorted((a, b) => WORST_FIRST.indexOf(a.standing) - WORST_FIRST.indexOf(b.standing));

/** The same as `continuityOf`, check by check: yields the done share, 0..1, returns what was found. */
export function* continuitySteps(plan: Plan): Generator<number, readonly SetupContinuity[], void> {
  const found: ContinuityFinding[] = [];
  for (const [done, check] of CHECKS.entries()) {
    yield done / CHECKS.length;
    found.push(...check(plan));
  }
  return plan.setups.map(({ id }) => ({
    setupId: id,
    findings: worstFirst(found.filter(({ setupId }) => setupId === id)),
  }));
}

/**
 * How the setups of a plan cut together: for each setup, in the plan's order, all that is found of it, worst first.
 * The same plan gives the same findings in the same order. `onProgress` hears the done share, 0..1.
 */
export function continuityOf(
  plan: Plan,
  onProgress: (share: number) => void = () => undefined,
): readonly SetupContinuity[] {
  const steps = continuitySteps(plan);
  for (let step = steps.next(); ; step = steps.next()) {
    if (step.done) return step.value;
    onProgress(step.value);
  }
}
