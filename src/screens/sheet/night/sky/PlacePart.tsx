import { useMemo, useState } from 'react';
import type { Plan } from '../../../../core/plan/schema/plan';
import { CITIES } from '../../../../core/sky/cities';
import { atPlace, devicePlace, goesByZone, withZoneClock } from '../../../../desk/night/places';
import { SelectField } from '../../../parts/Field';
import { editPlan } from '../../fields/edit';
import { PlaceFields } from '../../sky/PlaceFields';

/** Nearer than this a plan is in a city of the list, degrees. */
const NEAR = 0.2;
const ELSEWHERE = 'elsewhere';

/** Where the night is: from a list, from the device, or typed; and whether its clocks are those of its zone. */
export function PlacePart({ plan }: { readonly plan: Plan }) {
  const { latitudeDegrees, longitudeDegrees, timeZone } = plan.place;
  const [asking, setAsking] = useState(false);
  const [refused, setRefused] = useState<string | null>(null);
  const here = CITIES.find(
    (city) =>
      Math.abs(city.latitudeDegrees - latitudeDegrees) < NEAR &&
      Math.abs(city.longitudeDegrees - longitudeDegrees) < NEAR,
  );
  const byZone = useMemo(() => goesByZone(plan), [plan]);
  const ask = async (): Promise<void> => {
    setAsking(true);
    setRefused(null);
    const found = await devicePlace();
    setAsking(false);
    const sentence =
      typeof found === 'string'
        ? found
        : editPlan('go where this device is', (before) => atPlace(before, found));
    setRefused(sentence);
  };
  return (
    <section className="group" aria-label="The place">
      <h4>The place</h4>
      <div className="fields">
        <SelectField
          wide
          label="city"
          value={here?.label ?? ELSEWHERE}
          onChange={(label) => {
            const city = CITIES.find((each) => each.label === label);
            if (city) editPlan(`go to ${label}`, (before) => atPlace(before, city));
          }}
        >
          {here ? null : <option>{ELSEWHERE}</option>}
          {CITIES.map(({ label }) => (
            <option key={label}>{label}</option>
          ))}
        </SelectField>
        <PlaceFields plan={plan} />
      </div>
      <p className="acts">
        <button type="button" disabled={asking} onClick={() => void ask()}>
          {asking ? 'Asks this device' : 'Use where this device is'}
        </button>
      </p>
      {refused === null ? null : (
        <p className="err" role="alert">
          {refused}
        </p>
      )}
      {byZone === null ? (
        <p className="advice">
          This browser does not know the time zone {timeZone}: type the hours yourself.
        </p>
      ) : null}
      {byZone === false ? (
        <p className="advice">
          The night does not go by the clocks of {timeZone}.{' '}
          <button type="button" onClick={() => editPlan('go by the zone', withZoneClock)}>
            Go by them
          </button>
        </p>
      ) : null}
      <p className="advice">
        The cities are a short list of our own, to a hundredth of a degree. Nothing is asked of anybody, and
        where this device is stays in the plan.
      </p>
    </section>
  );
}
