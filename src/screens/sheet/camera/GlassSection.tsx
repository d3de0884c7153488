import { setLens } from '../../../core/plan/edits/setLens';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { SelectField } from '../../parts/Field';
import { edit } from './editing';

/** What a camera looks through. */
export function GlassSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const setupId = setup.id;
  return (
    <div className="fields">
      <SelectField
        wide
        label="lens"
        value={setup.lens}
        onChange={(value) => edit('change the lens', (before) => setLens(before, { setupId, lens: value }))}
      >
        {plan.kit.lenses.map((each) => (
          <option key={each.id} value={each.id}>
            {each.label}
          </option>
        ))}
      </SelectField>
    </div>
  );
}
