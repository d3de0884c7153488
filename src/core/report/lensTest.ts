import { type Holding, holdingsOf } from '../continuity/holding';
import { named } from '../plan/named';
import type { Plan } from '../plan/schema/plan';
import { formatSeconds } from '../units/seconds';
import type { LensTry } from './lensTries';
import { listed } from './listed';
import { setupReportSteps } from './setupReport';
import type { SetupReport } from './types';

/** One lens of the kit on a setup's camera, used in one way, everything else as it is. */
export interface LensTrial extends Pick<LensTry, 'id' | 'label' | 'tanHalfWidth'> {
  readonly holdings: readonly Holding[];
  /** What the setup would see of every item. */
  readonly report: SetupReport;
}

/**
 * Tries a lens of the plan's kit on a setup in one way, over its whole span or at one instant of the action's clock,
 * seconds. Yields the done share, 0..1.
 */
export function* lensTrialSteps(
  plan: Plan,
  { id, label, tanHalfWidth, setup }: LensTry,
  atSeconds: number | null,
): Generator<number, LensTrial, void> {
  const holdings = holdingsOf(plan, setup, atSeconds);
  const report = yield* setupReportSteps(plan, setup, atSeconds === null ? 'span' : { at: atSeconds });
  return { id, label, tanHalfWidth, holdings, report };
}

const lasting = (spans: Holding['heldSpans']): number =>
  spans.reduce((sum, [from, to]) => sum + to - from, 0);

const holdsAll = ({ holdings }: LensTrial, wanted: readonly string[]): boolean =>
  holdings.every(({ performerId, heldThroughout }) => !wanted.includes(performerId) || heldThroughout);

/** Of a lens that does not hold everybody: whom it loses first, as the end of a sentence. */
function lossOf(trial: LensTrial, wanted: readonly string[]): string {
  const lost = trial.holdings.filter(
    ({ performerId, heldThroughout }) => wanted.includes(performerId) && !heldThroughout,
  );
  const [from, to] = trial.report.seconds;
  if (from === to) return `does not hold ${listed(lost.map(({ label }) => named(label)))}`;
  const never = lost.filter(({ heldSpans }) => heldSpans.length === 0);
  if (never.length > 0) return `never holds ${listed(never.map(({ label }) => named(label)))}`;
  const parts = lost.map(
    ({ label, heldSpans }) =>
      `${named(label)} for ${formatSeconds(lasting(heldSpans))} of ${formatSeconds(to - from)}`,
  );
  return `holds ${listed(parts)}`;
}

/**
 * Which lens holds the wanted performers, in one or two sentences: the tightest that keeps all of their heads inside
 * the frame line throughout, or at the one instant that was tried, and what the next tighter one loses.
 */
export function lensAnswer(trials: readonly LensTrial[], wanted: readonly string[]): string {
  const tightestFirst = [...trials].sort((a, b) => a.tanHalfWidth - b.tanHalfWidth);
  const names = listed(
    (trials[0]?.holdings ?? [])
      .filter(({ performerId }) => wanted.includes(performerId))
      .map(({ label }) => named(label)),
  );
  if (names === '') return 'Nobody is asked for.';
  const [from, to] = tightestFirst[0].report.seconds;
  const how = from === to ? `at ${formatSeconds(from)}` : 'throughout';
  const place = tightestFirst.findIndex((trial) => holdsAll(trial, wanted));
  const best = tightestFirst[place];
  if (!best) {
    const widest = tightestFirst[tightestFirst.length - 1];
    return widest
      ? `No lens of the kit holds ${names} ${how}. The widest, ${widest.label}, ${lossOf(widest, wanted)}.`
      : 'The kit has no lens.';
  }
  const tighter = tightestFirst[place - 1];
  const answer = `${best.label} is the tightest that holds ${names} ${how}.`;
  return tighter ? `${answer} ${tighter.label} ${lossOf(tighter, wanted)}.` : answer;
}
