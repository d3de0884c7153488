import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import type { ItemReport, SetupReport } from '../types';
import { readsOver } from './readsOver';
import type { SetupLight } from './types';

/**
 * Whether an image in a mirror goes with what it is the image of. In a wet deck it is taken to: water turns back only a
 * part of the light that is lost already. A pane or a mirror may show another, brighter side of it, and is not asked.
 */
const imageIsLostToo = (plan: Plan, { mirroredShare }: ItemReport): boolean =>
  mirroredShare === 0 || plan.pieces.every(({ kind }) => kind !== 'pane');

/**
 * What a setup sees, with the verdict *lost in the dark* for what shows and does not read: the same report where there
 * is nothing of the kind.
 */
export function darkened<Report extends SetupReport>(
  plan: Plan,
  seen: Report,
  { reads }: Pick<SetupLight, 'reads'>,
): Report {
  const lost = new Set(
    reads.filter(({ verdict }) => verdict === 'lost in the dark').map(({ itemId }) => itemId),
  );
  if (lost.size === 0) return seen;
  return {
    ...seen,
    items: seen.items.map((item) =>
      item.verdict === 'showing' && lost.has(item.id) && imageIsLostToo(plan, item)
        ? { ...item, verdict: 'lost in the dark' }
        : item,
    ),
  };
}

/** What a setup sees with that verdict, of its plan alone. Yields the done share, 0..1. */
export function* darkenedSteps(
  plan: Plan,
  setup: Setup,
  seen: SetupReport,
): Generator<number, SetupReport, void> {
  const reads = yield* readsOver(plan, setup, seen);
  return darkened(plan, seen, { reads });
}
