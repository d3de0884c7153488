import { changeSetup } from '../../../core/plan/edits/changeSetup';
import type { Setup, Sway } from '../../../core/plan/schema/setup';
import { SelectField } from '../../parts/Field';
import { LengthField } from '../../parts/LengthField';
import { edit } from './editing';
import { LegalField } from './LegalField';

/** What a steady shoulder comes to. Source: common practice, no source */
const USUAL: Sway = { seed: 1, metres: 0.01, degrees: 0.4, counted: false };

/** The unrest of whoever carries a camera: how much, which, and whether the report counts it. */
export function SwayFields({ setup }: { readonly setup: Setup }) {
  const setupId = setup.id;
  const { sway } = setup;
  const put = (next: Sway | undefined): string | null =>
    edit('change the sway', (before) => changeSetup(before, { setupId, patch: { sway: next } }));
  return (
    <>
      <div className="fields">
        <SelectField
          wide
          label="sway"
          value={sway ? (sway.counted ? 'counted' : 'seen') : 'none'}
          onChange={(value) =>
            put(value === 'none' ? undefined : { ...(sway ?? USUAL), counted: value === 'counted' })
          }
        >
          <option value="none">none</option>
          <option value="seen">seen in the picture</option>
          <option value="counted">seen, and counted as close in the report</option>
        </SelectField>
        {sway ? (
          <>
            <LengthField
              label="sways by"
              metres={sway.metres}
              commit={(metres) => put({ ...sway, metres })}
            />
            <LegalField
              label="turns by"
              value={sway.degrees}
              legal={{ what: 'Sways', limits: [0, 20], unit: '°', decimals: 2 }}
              take={(degrees) => (degrees === undefined ? null : put({ ...sway, degrees }))}
            />
          </>
        ) : null}
      </div>
      {sway ? (
        <p className="acts">
          <button type="button" onClick={() => put({ ...sway, seed: sway.seed + 1 })}>
            Another sway
          </button>
        </p>
      ) : null}
    </>
  );
}
