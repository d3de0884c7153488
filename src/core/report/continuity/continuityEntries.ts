import { continuityOf } from '../../continuity/continuity';
import { coverageOf } from '../../continuity/coverage';
import type { Plan } from '../../plan/schema/plan';
import type { LengthSystem } from '../../units/lengths';
import type { ContinuityEntry, CoverageReport } from '../types';
import { continuitySentence } from './continuitySentence';
import { coverageSentence } from './coverageSentence';

/** All that is found of how a plan's setups cut together, in words, by setup and worst first. */
export function continuityEntries(
  plan: Plan,
  lengths: LengthSystem = 'm',
): ReadonlyMap<string, readonly ContinuityEntry[]> {
  return new Map(
    continuityOf(plan).map(({ setupId, findings }) => [
      setupId,
      findings.map((finding) => ({ ...finding, sentence: continuitySentence(plan, finding, lengths) })),
    ]),
  );
}

/** Who is covered by which setup, with a sentence for each hole. */
export function coverageReport(plan: Plan): CoverageReport {
  const coverage = coverageOf(plan);
  return {
    ...coverage,
    holes: coverage.holes.map((hole) => ({ ...hole, sentence: coverageSentence(plan, hole) })),
  };
}
