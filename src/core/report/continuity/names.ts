import type { ContinuityBase } from '../../continuity/types';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { listed } from '../listed';

/** A setup's letter; its id where the plan does not have it. */
export function letterOf(plan: Plan, setupId: string | null): string {
  const place = plan.setups.findIndex(({ id }) => id === setupId);
  return place < 0 ? (setupId ?? '') : setupLetter(place);
}

/** A performer's name as it stands in a sentence; their id where the plan does not have them. */
export const nameOf = (plan: Plan, performerId: string): string =>
  named(plan.cast.find(({ id }) => id === performerId)?.label ?? performerId);

/** `Nuno`, `Nuno and Vera`, `Nuno, Vera and Rui`; with `or` between the last two where that is said. */
export const namesOf = (plan: Plan, performerIds: readonly string[], between = 'and'): string =>
  listed(
    performerIds.map((id) => nameOf(plan, id)),
    between,
  );

/** The letters of a finding's setup and of the one it is held against. */
export const lettersOf = (
  plan: Plan,
  { setupId, againstId }: Pick<ContinuityBase<string>, 'setupId' | 'againstId'>,
): readonly [own: string, other: string] => [letterOf(plan, setupId), letterOf(plan, againstId)];
