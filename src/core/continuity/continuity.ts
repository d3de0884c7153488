import type { Plan } from '../plan/schema/plan';
import { type CheatFinding, cheatSteps } from './cheats';
import { shotSteps } from './continuityShots';
import { type DirtySingleFinding, dirtySteps } from './dirty';
import { type EyelineFinding, eyelineSteps } from './eyelines';
import { type HeadroomFinding, headroomSteps } from './headroom';
import { type KeySideFinding, keySideSteps } from './keySide';
import { type LineFinding, lineSteps } from './line';
import { neighbourSteps, type SizeChangeFinding, type ThirtyDegreesFinding } from './neighbours';
import { type ScreenDirectionFinding, screenDirectionSteps } from './screenDirection';
import { type MatchingSinglesFinding, matchingSteps } from './singles';
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

type Check = (plan: Plan) => Generator<number, readonly ContinuityFinding[], void>;

/** Every check, in the order in which findings of one standing are told. */
const CHECKS: readonly Check[] = [
  lineSteps,
  screenDirectionSteps,
  eyelineSteps,
  neighbourSteps,
  (plan) => matchingSteps(plan),
  dirtySteps,
  (plan) => headroomSteps(plan),
  keySideSteps,
  cheatSteps,
];

const WORST_FIRST: readonly Standing[] = ['breaks', 'said', 'holds'];

/** Findings worst first; those that stand alike stay in their order. */
export const worstFirst = <Finding extends { readonly standing: Standing }>(
  findings: readonly Finding[],
): readonly Finding[] =>
  findings.toSorted((a, b) => WORST_FIRST.indexOf(a.standing) - WORST_FIRST.indexOf(b.standing));

/** How much of the work the look at all setups is, as it is told: an estimate. */
const LOOKING = 0.4;

/**
 * The same as `continuityOf`, look by look and check by check, setup by setup in most of them: yields the done share, 0..1,
 * returns what was found. Whoever takes the steps may stop at any of them.
 */
export function* continuitySteps(plan: Plan): Generator<number, readonly SetupContinuity[], void> {
  for (const share of shotSteps(plan)) yield share * LOOKING;
  const bySetup = new Map<string, ContinuityFinding[]>(plan.setups.map(({ id }) => [id, []]));
  for (const [done, check] of CHECKS.entries()) {
    const steps = check(plan);
    let step = steps.next();
    for (; !step.done; step = steps.next())
      yield LOOKING + ((1 - LOOKING) * (done + step.value)) / CHECKS.length;
    for (const finding of step.value) bySetup.get(finding.setupId)?.push(finding);
  }
  return plan.setups.map(({ id }) => ({ setupId: id, findings: worstFirst(bySetup.get(id) ?? []) }));
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
