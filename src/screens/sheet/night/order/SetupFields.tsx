import { needsOf, takesOf } from '../../../../core/night/times/takes';
import type { Patch } from '../../../../core/plan/edits/nightRecord';
import { setNightSetup } from '../../../../core/plan/edits/setNightSetup';
import type { NightSetup } from '../../../../core/plan/schema/night';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { withNames } from '../../../../core/plan/withNames';
import { Field, SelectField } from '../../../parts/Field';
import { editPlan } from '../../fields/edit';
import { MinutesField } from '../fields/AmountField';
import { ClockField } from '../fields/ClockField';
import { SwitchField } from '../fields/SwitchField';
import { PHASES } from './phases';

type Own = Omit<NightSetup, 'setup'>;

const WHEN = ['before dark', 'after dark'] as const;
const GROUND = ['wet', 'dry'] as const;
const ANY_TIME = 'dark or not';
const ANY_GROUND = 'wet or dry';
const IN_FRAME = 'whoever is in frame';
const NAMED = 'as ticked';

/** Who is needed for a setup: whoever its frame has, or those who are ticked. */
function CastFields({
  plan,
  setup,
  cast,
  set,
}: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly cast: readonly string[] | undefined;
  readonly set: (name: string, patch: Patch<Own>) => string | null;
}) {
  if (plan.cast.length === 0) return null;
  return (
    <section className="group">
      <h4>Who is needed</h4>
      <div className="fields">
        <SelectField
          wide
          label="cast"
          value={cast ? NAMED : IN_FRAME}
          onChange={(word) =>
            set(`say who is needed for ${setup.label}`, {
              cast: word === NAMED ? plan.cast.map(({ id }) => id) : undefined,
            })
          }
        >
          <option>{IN_FRAME}</option>
          <option>{NAMED}</option>
        </SelectField>
        {cast
          ? withNames(plan).cast.map(({ id, label }) => (
              <SwitchField
                key={id}
                label={label}
                isOn={cast.includes(id)}
                onChange={(isOn) =>
                  set(`say who is needed for ${setup.label}`, {
                    cast: plan.cast
                      .map((performer) => performer.id)
                      .filter((each) => (each === id ? isOn : cast.includes(each))),
                  })
                }
              />
            ))
          : null}
      </div>
    </section>
  );
}

/** What the night knows of one setup: its minutes, when it may be shot, its ground, its light, its cast. */
export function SetupFields({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const own = needsOf(plan, setup.id);
  const usual = takesOf({ ...(plan.night && { night: { ...plan.night, setups: [] } }) }, setup.id);
  const set = (name: string, patch: Patch<Own>): string | null =>
    editPlan(name, (before) => setNightSetup(before, { setupId: setup.id, patch }));
  return (
    <>
      <section className="group">
        <h4>What {setup.label} takes</h4>
        <div className="fields">
          {PHASES.map(({ phase, word }) => (
            <MinutesField
              key={phase}
              label={word}
              own={own[phase]}
              usual={usual[phase]}
              commit={(minutes) => set(`say what ${setup.label} takes`, { [phase]: minutes })}
            />
          ))}
        </div>
      </section>
      <section className="group">
        <h4>When and how it is shot</h4>
        <div className="fields">
          <SelectField
            label="light"
            value={own.when ?? ANY_TIME}
            onChange={(word) =>
              set(`say when ${setup.label} is shot`, { when: WHEN.find((each) => each === word) })
            }
          >
            {[ANY_TIME, ...WHEN].map((each) => (
              <option key={each}>{each}</option>
            ))}
          </SelectField>
          <SelectField
            label="ground"
            value={own.ground ?? ANY_GROUND}
            onChange={(word) =>
              set(`say how the ground of ${setup.label} is`, { ground: GROUND.find((each) => each === word) })
            }
          >
            {[ANY_GROUND, ...GROUND].map((each) => (
              <option key={each}>{each}</option>
            ))}
          </SelectField>
          <ClockField
            label="not before"
            time={own.from}
            empty="any time"
            commit={(from) => set(`say when ${setup.label} is shot`, { from })}
          />
          <ClockField
            label="shot by"
            time={own.until}
            empty="any time"
            commit={(until) => set(`say when ${setup.label} is shot`, { until })}
          />
          <Field
            wide
            label="lighting"
            text={own.lighting ?? ''}
            empty="as the plan is lit"
            commit={(text) =>
              set(`name the lighting of ${setup.label}`, {
                lighting: text.trim() === '' ? undefined : text.trim(),
              })
            }
          />
        </div>
        <p className="advice">
          Setups with the same word for their lighting are lit alike: nothing is set anew.
        </p>
      </section>
      <CastFields plan={plan} setup={setup} cast={own.cast} set={set} />
    </>
  );
}
