import { isLamp } from '../../../../core/plan/cues';
import type { Plan } from '../../../../core/plan/schema/plan';
import { turnLamp } from '../../../../desk/light/dimming';
import { FieldOf } from '../../fields/FieldOf';
import { fieldsOf } from '../../fields/fieldsOf';
import type { FieldSpec } from '../../fields/types';
import { endPreviews } from '../../previewing';
import type { Lighting } from '../words';

/** What of an item's fields is about how much light it gives. */
const ABOUT_LIGHT: ReadonlySet<string> = new Set([
  'dim',
  'in stops',
  'modifier',
  'beam',
  'field',
  'lets through',
  'gives back',
  'glows in',
  'colour',
  'gel',
  'shift',
  'neutral gel',
  'diffusion',
  'doubles',
  'singles',
]);

const lightFields = (plan: Plan, gear: Lighting): readonly FieldSpec[] =>
  fieldsOf(plan, { section: 'gear', record: gear }, 'm')
    .flatMap(({ fields }) => fields)
    .filter(({ label }) => ABOUT_LIGHT.has(label));

/** Under the chosen lamp: its dim to type, what is on it, and its switch. */
export function LampControls({ plan, gear }: { readonly plan: Plan; readonly gear: Lighting }) {
  return (
    <div className="lamp-controls">
      <div className="fields">
        {lightFields(plan, gear).map((spec) => (
          <FieldOf key={spec.label} spec={spec} />
        ))}
      </div>
      {isLamp(gear) ? (
        <button
          type="button"
          onClick={() => {
            endPreviews();
            turnLamp(gear.id, gear.label, gear.dim);
          }}
        >
          {gear.dim > 0 ? 'Turn it off' : 'Turn it on'}
        </button>
      ) : null}
    </div>
  );
}
