import { filterShares } from '../../../core/optics/stray';
import { changeSetup } from '../../../core/plan/edits/changeSetup';
import type { Filter, Setup } from '../../../core/plan/schema/setup';
import { formatShare } from '../../../core/units/shares';
import { Segmented } from '../../parts/Segmented';
import { edit } from './editing';
import { LegalField } from './LegalField';

const KINDS = [
  { value: 'none', word: 'none' },
  { value: 'mist', word: 'mist' },
  { value: 'halation', word: 'halation' },
] as const;
const LEGAL = { what: 'Strengths', limits: [0, 4] } as const;

/** What a filter does to the light, in words. */
function whatItDoes(filter: Filter): string {
  const { mist, halation } = filterShares(filter);
  return filter.kind === 'mist'
    ? `Spreads ${formatShare(mist)} of the light around its highlights.`
    : `Sends ${formatShare(halation[0])} of the red back around its highlights, of the blue hardly any.`;
}

/** What lies before the lens, or behind the film. The report does not ask for it. */
export function FilterSection({ setup }: { readonly setup: Setup }) {
  const { filter } = setup;
  const take = (next: Filter | undefined): string | null =>
    edit('change the filter', (before) =>
      changeSetup(before, { setupId: setup.id, patch: { filter: next } }),
    );
  return (
    <section className="group">
      <h4>Filter</h4>
      <Segmented
        label="Filter"
        choices={KINDS}
        chosen={filter?.kind ?? 'none'}
        onChoose={(kind) =>
          void take(kind === 'none' ? undefined : { kind, strength: filter?.strength ?? 0.5 })
        }
      />
      {filter ? (
        <>
          <div className="fields">
            <LegalField
              label="strength"
              value={filter.strength}
              legal={LEGAL}
              take={(strength) => (strength === undefined ? null : take({ ...filter, strength }))}
            />
          </div>
          <p className="q">{whatItDoes(filter)}</p>
        </>
      ) : null}
    </section>
  );
}
