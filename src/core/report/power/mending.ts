import type { Plan } from '../../plan/schema/plan';
import { mendsOfBreaker, mendsOfCord, mendsOfDrop, mendsOfFault } from '../../power/mend/mends';
import type { Mend } from '../../power/mend/types';
import { withMend } from '../../power/mend/withMend';
import { type Power, powerOf } from '../../power/powerOf';
import { inletSentences } from './loadSentences';
import { plugSentences } from './plugSentences';
import type { PowerSentence } from './types';
import { zeroSentences } from './zeroSentences';

/** A sentence of the power with what would take care of it. */
export interface MendedSentence extends PowerSentence {
  readonly mends: readonly Mend[];
}

function mendsOf(plan: Plan, power: Power, { about, standing, itemIds }: PowerSentence): readonly Mend[] {
  const [id] = itemIds;
  if (id === undefined) return [];
  if (about === 'drop') return mendsOfDrop(plan, power, id);
  if (standing !== 'breaks') return [];
  if (about === 'cord') return mendsOfCord(power, id);
  if (about !== 'breaker') return [];
  const mends = mendsOfBreaker(plan, power, id);
  // A breaker is told with its loads, an inlet alone: to share circuits out may leave that as it is.
  if (itemIds.length > 1) return mends;
  return mends.filter((mend) =>
    inletSentences(powerOf(withMend(plan, mend), 1)).every(({ itemIds: [boxId] }) => boxId !== id),
  );
}

/** The sentences of a plan's power as it is worked out, each with the mends that were found to take care of it. */
export function mendedSentences(
  plan: Plan,
  sentences: readonly PowerSentence[],
  power: Power,
): readonly MendedSentence[] {
  const ofPlugs = new Map<string, readonly Mend[]>(
    power.network.faults.flatMap((fault) =>
      plugSentences(plan, [fault]).map(
        ({ sentence }) => [sentence, mendsOfFault(plan, power, fault)] as const,
      ),
    ),
  );
  for (const { sentence, itemIds } of zeroSentences(power))
    ofPlugs.set(sentence, [{ act: 'say', itemId: itemIds[0] }]);
  return sentences.map((told) => ({
    ...told,
    mends: told.about === 'plugs' ? (ofPlugs.get(told.sentence) ?? []) : mendsOf(plan, power, told),
  }));
}
