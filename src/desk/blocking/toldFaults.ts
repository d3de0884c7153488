import type { Plan } from '../../core/plan/schema/plan';
import type { BlockingFault } from '../../core/report/blockingFaults';
import { blockingFaults } from '../../core/report/castNotices';

/** A fault of blocking as a worker tells it: an edit does not go over, only what it is called. */
export interface ToldFault extends Omit<BlockingFault, 'mend'> {
  /** Null where there is no edit that mends it. */
  readonly mendName: string | null;
}

export const toldFaults = (plan: Plan): readonly ToldFault[] =>
  blockingFaults(plan).map(({ mend, ...told }) => ({ ...told, mendName: mend?.name ?? null }));
