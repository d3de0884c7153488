import { useMemo } from 'react';
import { bagsThatHold } from '../../../../core/cautions/wind/ballast';
import { setBags } from '../../../../core/plan/edits/setBags';
import { named } from '../../../../core/plan/named';
import type { Plan } from '../../../../core/plan/schema/plan';
import { make } from '../../previewing';
import { bagsWords } from './words';

/** Lays the bags over a stand's legs that hold it in the gust that is forecast, as one step; nothing where none would. */
export function BagsButton({ plan, standId }: { readonly plan: Plan; readonly standId: string }) {
  const stand = plan.gear.find(({ id }) => id === standId);
  const held = useMemo(() => (stand?.kind === 'stand' ? bagsThatHold(plan, stand) : null), [plan, stand]);
  if (stand?.kind !== 'stand' || !held) return null;
  const { count, kilograms } = held;
  return (
    <button
      type="button"
      className="do"
      onClick={() =>
        make(
          'add the bags',
          (before) => setBags(before, { id: standId, bags: { count, kilograms } }),
          `${named(stand.label)} has ${count} ${count === 1 ? 'bag' : 'bags'} over its legs.`,
        )
      }
    >
      {bagsWords(held, stand.bags !== undefined)}
      <span className="vh"> on {stand.label}</span>
    </button>
  );
}
