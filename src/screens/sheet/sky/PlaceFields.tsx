import { setPlace } from '../../../core/plan/edits/setPlace';
import type { Plan } from '../../../core/plan/schema/plan';
import { Field } from '../../parts/Field';
import { NumberField } from '../../parts/NumberField';
import { editPlan } from '../fields/edit';

const place = (name: string, patch: Partial<Plan['place']>): string | null =>
  editPlan(name, (plan) => setPlace(plan, { patch: { place: patch } }));

const ANGLES = [
  { key: 'latitudeDegrees', label: 'latitude', decimals: 4, name: 'set the latitude' },
  { key: 'longitudeDegrees', label: 'longitude', decimals: 4, name: 'set the longitude' },
  { key: 'northDegrees', label: 'north at', decimals: 1, name: 'turn north' },
] as const;

/** When and where a plan's night is: date and time zone, the place by its name and by degrees, and which way north is. */
export function PlaceFields({ plan }: { readonly plan: Plan }) {
  const { date, timeZone, label } = plan.place;
  return (
    <>
      <Field label="date" text={date} commit={(text) => place('set the date', { date: text.trim() })} />
      <Field
        wide
        label="time zone"
        text={timeZone}
        commit={(text) => place('set the time zone', { timeZone: text.trim() })}
      />
      <Field
        wide
        label="place"
        text={label}
        commit={(text) => place('name the place', { label: text.trim() })}
      />
      {ANGLES.map(({ key, label, decimals, name }) => (
        <NumberField
          key={key}
          label={label}
          unit="°"
          decimals={decimals}
          value={plan.place[key]}
          commit={(degrees) => place(name, { [key]: degrees })}
        />
      ))}
    </>
  );
}
