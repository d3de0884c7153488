import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { Wish } from '../../plan/schema/texts';
import { setupReportSteps } from '../../report/setupReport';
import { type ItemReport, type SetupReport, VERDICTS, type Verdict } from '../../report/types';
import { type Watch, watchesOf } from './watch';

/** What is known of a plan as it is: what each setup sees, and where its camera is. */
export interface Known {
  readonly plan: Plan;
  readonly setups: readonly KnownSetup[];
}

export interface KnownSetup {
  readonly setup: Setup;
  readonly watches: readonly Watch[];
  readonly report: SetupReport;
  readonly items: ReadonlyMap<string, ItemReport>;
}

/** An item as it is seen whatever the light: a change of things is judged by that, before and after. */
const inAnyLight = (item: ItemReport): ItemReport =>
  item.verdict === 'lost in the dark' ? { ...item, verdict: 'showing' } : item;

/**
 * What all setups of a plan see: of `seen`, the reports of this very plan, what is there, the others read anew. Yields
 * the done share, 0..1.
 */
export function* knownOf(plan: Plan, seen: readonly SetupReport[]): Generator<number, Known, void> {
  const setups: KnownSetup[] = [];
  for (const [k, setup] of plan.setups.entries()) {
    let report = seen.find(({ id }) => id === setup.id);
    if (!report) {
      const steps = setupReportSteps(plan, setup);
      let step = steps.next();
      for (; !step.done; step = steps.next()) yield (k + step.value) / plan.setups.length;
      report = step.value;
    }
    const items = new Map(report.items.map((item) => [item.id, inAnyLight(item)]));
    setups.push({ setup, report, watches: watchesOf(plan, setup), items });
    yield (k + 1) / plan.setups.length;
  }
  return { plan, setups };
}

/** Whether one verdict is worse than another for what has to keep out. */
const isWorse = (verdict: Verdict, than: Verdict): boolean =>
  VERDICTS.indexOf(verdict) < VERDICTS.indexOf(than);

/** Whether a verdict goes against a wish; what only the dark hides does too. */
export function isFinding(wish: Wish, verdict: Verdict): boolean {
  if (wish === 'keep out') return isWorse(verdict, 'covered');
  return wish === 'must show' && verdict !== 'showing';
}

/** Whether an item that has to keep out is seen and nobody has let it show. */
export const isUnwanted = ({ wish, verdict, accepted }: ItemReport): boolean =>
  wish === 'keep out' && !accepted && isFinding(wish, verdict);

/** Whether a change of verdict makes a finding that was none, or a worse one of one that was. */
export function isNewFinding(wish: Wish, before: Verdict, after: Verdict): boolean {
  if (!isFinding(wish, after)) return false;
  if (!isFinding(wish, before)) return true;
  return wish === 'keep out' && isWorse(after, before);
}
