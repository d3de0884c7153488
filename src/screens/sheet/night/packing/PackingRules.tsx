import { USUAL_PACKING } from '../../../../core/night/packing/rules';
import { setPacking } from '../../../../core/plan/edits/setPacking';
import { setSpare } from '../../../../core/plan/edits/setSpare';
import { SPARED } from '../../../../core/plan/schema/night';
import type { Plan } from '../../../../core/plan/schema/plan';
import { formatNumber, readNumber } from '../../../../core/units/numbers';
import { Field } from '../../../parts/Field';
import { editPlan } from '../../fields/edit';
import { AmountField } from '../fields/AmountField';

/** By what the packing list is counted: slack, water, batteries, and one spare for every so many of a thing. */
export function PackingRules({ plan }: { readonly plan: Plan }) {
  const rules = plan.night?.packing;
  return (
    <>
      <section className="group">
        <h4>Rules</h4>
        <div className="fields">
          <AmountField
            label="cable slack"
            unit="%"
            own={rules?.slack === undefined ? undefined : rules.slack * 100}
            usual={USUAL_PACKING.slack * 100}
            least={0}
            most={100}
            commit={(percent) =>
              editPlan('set the slack of cables', (before) =>
                setPacking(before, { patch: { slack: percent === undefined ? undefined : percent / 100 } }),
              )
            }
          />
          <AmountField
            label="water lies"
            unit="mm"
            own={rules?.waterMillimetres}
            usual={USUAL_PACKING.waterMillimetres}
            least={0}
            most={20}
            decimals={1}
            commit={(waterMillimetres) =>
              editPlan('set the water', (before) => setPacking(before, { patch: { waterMillimetres } }))
            }
          />
          <AmountField
            label="a battery lasts"
            unit="h"
            own={rules?.batteryHours}
            usual={USUAL_PACKING.batteryHours}
            least={0.1}
            most={24}
            decimals={1}
            commit={(batteryHours) =>
              editPlan('say how long a battery lasts', (before) =>
                setPacking(before, { patch: { batteryHours } }),
              )
            }
          />
        </div>
      </section>
      <section className="group">
        <h4>One spare for every so many</h4>
        <div className="fields">
          {SPARED.map((of) => {
            const own = rules?.spares?.find((rule) => rule.of === of)?.oneFor;
            return (
              <Field
                key={of}
                label={of}
                text={own === undefined ? '' : formatNumber(own, 0)}
                empty="none"
                commit={(text) => {
                  const read = readNumber(text, []);
                  const isNone = text.trim() === '' || text.trim().toLowerCase() === 'none';
                  if (
                    !isNone &&
                    !(read && Number.isInteger(read.value) && read.value >= 1 && read.value <= 100)
                  )
                    return 'Type a whole number from 1 to 100, or nothing for no spares.';
                  return editPlan(`set the spare ${of}`, (before) =>
                    setSpare(before, { of, oneFor: isNone || !read ? null : read.value }),
                  );
                }}
              />
            );
          })}
        </div>
      </section>
    </>
  );
}
