import { USUAL_NIGHT, USUAL_TIMES } from '../../../../core/night/times/takes';
import type { Patch } from '../../../../core/plan/edits/nightRecord';
import { setNight, type WholeNight } from '../../../../core/plan/edits/setNight';
import type { DarkKind } from '../../../../core/plan/schema/night';
import type { Plan } from '../../../../core/plan/schema/plan';
import { SelectField } from '../../../parts/Field';
import { editPlan } from '../../fields/edit';
import { AmountField, MinutesField } from '../fields/AmountField';
import { ClockField } from '../fields/ClockField';
import { SwitchField } from '../fields/SwitchField';
import { PHASES } from './phases';

const DARKS: readonly DarkKind[] = ['civil', 'nautical', 'astronomical'];

const set = (name: string, patch: Patch<WholeNight>): string | null =>
  editPlan(name, (plan) => setNight(plan, { patch }));

/** What is about the whole night: call, wrap, meal, dusk, ground, and what every setup takes that says nothing else. */
export function NightFields({ plan }: { readonly plan: Plan }) {
  const { night } = plan;
  const meal = night?.meal;
  return (
    <>
      <section className="group">
        <h4>Times</h4>
        <div className="fields">
          <ClockField
            label="call"
            time={night?.call}
            empty="before sunset"
            commit={(call) => set('set the call', { call })}
          />
          <ClockField
            label="wrap by"
            time={night?.wrapBy}
            empty="no time"
            commit={(wrapBy) => set('set the wrap', { wrapBy })}
          />
          <AmountField
            label="meal after"
            unit="h"
            own={meal?.afterHours}
            usual={USUAL_NIGHT.meal.afterHours}
            least={0.5}
            most={12}
            decimals={1}
            commit={(afterHours) =>
              set('set the meal', {
                meal:
                  afterHours === undefined
                    ? undefined
                    : { minutes: USUAL_NIGHT.meal.minutes, ...meal, afterHours },
              })
            }
          />
          <MinutesField
            label="meal takes"
            own={meal?.minutes}
            usual={USUAL_NIGHT.meal.minutes}
            commit={(minutes) =>
              set('set the meal', {
                meal:
                  minutes === undefined
                    ? undefined
                    : { afterHours: USUAL_NIGHT.meal.afterHours, ...meal, minutes },
              })
            }
          />
          <MinutesField
            label="wrap takes"
            own={night?.strike}
            usual={USUAL_NIGHT.strike}
            commit={(strike) => set('set the time to strike', { strike })}
          />
          <SelectField
            label="dark from"
            value={night?.dark ?? 'nautical'}
            onChange={(word) => {
              const dark = DARKS.find((each) => each === word);
              if (dark) set('say when it is dark', { dark });
            }}
          >
            {DARKS.map((each) => (
              <option key={each} value={each}>
                {each} dusk
              </option>
            ))}
          </SelectField>
        </div>
      </section>
      <section className="group">
        <h4>Wet ground</h4>
        <div className="fields">
          <MinutesField
            label="dries in"
            own={night?.dries}
            usual={USUAL_NIGHT.dries}
            commit={(dries) => set('say when it dries', { dries })}
          />
          <SwitchField
            label="wetted once"
            isOn={night?.wetOnce === true}
            onChange={(isOn) => set('wet the ground once', { wetOnce: isOn ? true : undefined })}
          />
        </div>
      </section>
      <section className="group">
        <h4>What a setup takes that says nothing else</h4>
        <div className="fields">
          {PHASES.map(({ phase, word }) => (
            <MinutesField
              key={phase}
              label={word}
              own={night?.times?.[phase]}
              usual={USUAL_TIMES[phase]}
              commit={(minutes) =>
                editPlan(`say what it takes to ${word}`, (before) => {
                  const { [phase]: _, ...others } = before.night?.times ?? {};
                  const times = minutes === undefined ? others : { ...others, [phase]: minutes };
                  return setNight(before, { patch: { times } });
                })
              }
            />
          ))}
        </div>
      </section>
    </>
  );
}
