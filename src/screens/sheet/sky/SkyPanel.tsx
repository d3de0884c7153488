import { useMemo } from 'react';
import { setSky } from '../../../core/plan/edits/setSky';
import type { Plan } from '../../../core/plan/schema/plan';
import { GLOWS, type Sky } from '../../../core/plan/schema/sky';
import { lightUnitOf } from '../../../core/units/illuminance';
import { useSession } from '../../../desk/hooks';
import { zoneOffsetHours } from '../../../desk/sky/zone';
import { Field, SelectField, ShownField } from '../../parts/Field';
import { editPlan } from '../fields/edit';
import { notAClock, readClock } from './readClock';
import { clockText, moonText, offsetText, skyNow, sunText } from './words';

const USUAL: Sky = { glow: 'cloud over a large town' };
/** A time to look at the sky before anybody has said one. */
const FIRST_TIME = '22:00';
const MOONLIGHT = { hidden: 'none on the roof', out: 'on the roof, with its shadows' };
const sky = (name: string, change: (before: Sky) => Sky): string | null =>
  editPlan(name, (plan) => setSky(plan, { sky: change(plan.sky ?? USUAL) }));

/** The offset of the place's zone; where it is unknown, that of the sun. */
const offsetOf = ({ timeZone, date, longitudeDegrees }: Plan['place'], time: string): number =>
  zoneOffsetHours(timeZone, date, time) ?? Math.round(longitudeDegrees / 15);

const clockOf = (place: Plan['place'], time: string): NonNullable<Sky['clock']> => ({
  time,
  utcOffsetHours: offsetOf(place, time),
});

/** The night over the roof: what glows, when the action is lit, where the moon stands and whether it is out. */
export function SkyPanel({ plan }: { readonly plan: Plan }) {
  const { place } = plan;
  const { glow, clock, moon } = plan.sky ?? USUAL;
  const unit = lightUnitOf(useSession((state) => state.lengths));
  const time = clock?.time ?? FIRST_TIME;
  const offset = useMemo(
    () => clock?.utcOffsetHours ?? offsetOf(place, FIRST_TIME),
    [clock?.utcOffsetHours, place],
  );
  const now = useMemo(() => skyNow(place, time, offset), [place, time, offset]);
  const zone = useMemo(() => zoneOffsetHours(place.timeZone, place.date, time), [place, time]);
  const { times } = now;
  return (
    <section className="group sky">
      <h4>The sky</h4>
      <div className="fields">
        <SelectField
          wide
          label="night"
          value={glow}
          onChange={(word) => {
            const found = GLOWS.find((each) => each === word);
            if (found) sky('set the sky', (before) => ({ ...before, glow: found }));
          }}
        >
          {GLOWS.map((each) => (
            <option key={each}>{each}</option>
          ))}
        </SelectField>
        <Field
          label="lit at"
          text={clock?.time ?? ''}
          empty="no time"
          commit={(text) => {
            if (text.trim() === '') return sky('take the time away', ({ glow: kept }) => ({ glow: kept }));
            const read = readClock(text);
            if (!read) return notAClock(text);
            return sky('say when it is lit', (before) => ({ ...before, clock: clockOf(place, read) }));
          }}
        />
        <ShownField label="clock" text={offsetText(offset)} />
        <ShownField label="sunset" text={clockText(times.sunset)} />
        <ShownField label="dark from" text={clockText(times.nauticalDusk)} />
        <ShownField label="moonrise" text={clockText(times.moonrise)} />
        <ShownField label="moonset" text={clockText(times.moonset)} />
        <ShownField wide label="sun" text={sunText(now.sunAltitude)} />
        <ShownField wide label="moon" text={moonText(now.moon, unit)} />
        <SelectField
          wide
          label="moonlight"
          value={moon === true ? MOONLIGHT.out : MOONLIGHT.hidden}
          onChange={(word) => {
            const isOut = word === MOONLIGHT.out;
            sky(isOut ? 'let the moon out' : 'hide the moon', (before) => ({
              ...before,
              clock: before.clock ?? clockOf(place, FIRST_TIME),
              moon: isOut,
            }));
          }}
        >
          <option>{MOONLIGHT.hidden}</option>
          <option>{MOONLIGHT.out}</option>
        </SelectField>
      </div>
      {clock && zone !== null && zone !== clock.utcOffsetHours ? (
        <p className="advice">
          The time is kept at {offsetText(clock.utcOffsetHours)}; {place.timeZone} has {offsetText(zone)} that
          night.{' '}
          <button
            type="button"
            onClick={() =>
              sky('set the clock', (before) => ({ ...before, clock: { time, utcOffsetHours: zone } }))
            }
          >
            Go by {offsetText(zone)}
          </button>
        </p>
      ) : null}
      {clock ? null : (
        <p className="advice">
          Times and the moon are as they stand at {FIRST_TIME}. Say when the action is lit, and dusk and the
          moon light the roof.
        </p>
      )}
    </section>
  );
}
