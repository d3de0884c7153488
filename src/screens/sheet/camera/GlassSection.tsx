import { useStore } from 'zustand';
import type { Lens } from '../../../core/plan/schema/kit';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { NBSP } from '../../../core/units/numbers';
import {
  bodiesOffered,
  giveBody,
  giveLens,
  giveMode,
  lensesOffered,
  modesOffered,
} from '../../../desk/kit/glassChoices';
import { openKit, ownKitStore } from '../../../desk/kit/ownKitStore';
import { SelectField } from '../../parts/Field';
import { CoverLine } from './CoverLine';
import { DeliveryFields } from './DeliveryFields';
import { edit } from './editing';

function Options(props: {
  readonly word: string;
  readonly entries: readonly { readonly id: string; readonly label: string }[];
}) {
  if (props.entries.length === 0) return null;
  return (
    <optgroup label={props.word}>
      {props.entries.map(({ id, label }) => (
        <option key={id} value={id}>
          {label}
        </option>
      ))}
    </optgroup>
  );
}

const found = <Entry extends { readonly id: string }>(
  { plan, kept, builtIn }: Readonly<Record<'plan' | 'kept' | 'builtIn', readonly Entry[]>>,
  id: string,
): Entry | null => [...plan, ...kept, ...builtIn].find((entry) => entry.id === id) ?? null;

/** The lens's name, and its focal length where the name does not begin with it. */
const lensWord = ({ id, label, focalMm, set }: Lens): { readonly id: string; readonly label: string } => ({
  id,
  label: [set, label.includes(String(focalMm)) ? label : `${label}, ${focalMm}${NBSP}mm`]
    .filter(Boolean)
    .join(', '),
});

/** What a camera looks through: body, mode and lens, whether the one covers the other, and what goes out of it. */
export function GlassSection({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const own = useStore(ownKitStore);
  const setupId = setup.id;
  const lenses = lensesOffered(plan, own);
  const bodies = bodiesOffered(plan, own);
  const modes = modesOffered(plan, own, setup.body);
  return (
    <section className="group">
      <div className="fields">
        <SelectField
          wide
          label="lens"
          value={setup.lens}
          onChange={(id) => {
            const lens = found(lenses, id);
            if (lens) edit('change the lens', (before) => giveLens(before, setupId, lens));
          }}
        >
          <Options word="In this plan" entries={lenses.plan.map(lensWord)} />
          <Options word="Kept here" entries={lenses.kept.map(lensWord)} />
          <Options word="Built in" entries={lenses.builtIn.map(lensWord)} />
        </SelectField>
        <SelectField
          wide
          label="body"
          value={setup.body}
          onChange={(id) => {
            const body = found(bodies, id);
            if (body) edit('change the body', (before) => giveBody(before, setupId, body));
          }}
        >
          <Options word="In this plan" entries={bodies.plan} />
          <Options word="Kept here" entries={bodies.kept} />
          <Options word="Built in" entries={bodies.builtIn} />
        </SelectField>
        <SelectField
          wide
          label="mode"
          value={setup.mode}
          onChange={(id) => {
            const mode = modes.find((each) => each.id === id);
            if (mode) edit('change the mode', (before) => giveMode(before, setupId, mode));
          }}
        >
          {modes.map(({ id, label, gateMm }) => (
            <option key={id} value={id}>
              {label}, {gateMm[0]} × {gateMm[1]}
              {NBSP}mm
            </option>
          ))}
        </SelectField>
        <DeliveryFields setup={setup} />
      </div>
      <CoverLine plan={plan} setup={setup} />
      <p className="acts">
        <button type="button" className="bare" onClick={openKit}>
          Bodies and lenses
        </button>
      </p>
    </section>
  );
}
