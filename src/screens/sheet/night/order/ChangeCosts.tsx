import { USUAL_COSTS } from '../../../../core/night/times/takes';
import { setNight } from '../../../../core/plan/edits/setNight';
import type { Plan } from '../../../../core/plan/schema/plan';
import { editPlan } from '../../fields/edit';
import { MinutesField } from '../fields/AmountField';
import { COSTS } from './phases';

/** What changing from one setup to the next costs. */
export function ChangeCosts({ plan }: { readonly plan: Plan }) {
  return (
    <section className="group">
      <h4>What a change costs</h4>
      <div className="fields">
        {COSTS.map(({ cost, word }) => (
          <MinutesField
            key={cost}
            label={word}
            own={plan.night?.costs?.[cost]}
            usual={USUAL_COSTS[cost]}
            commit={(minutes) =>
              editPlan(`say what ${word} costs`, (before) => {
                const { [cost]: _, ...others } = before.night?.costs ?? {};
                const costs = minutes === undefined ? others : { ...others, [cost]: minutes };
                return setNight(before, { patch: { costs } });
              })
            }
          />
        ))}
      </div>
      <p className="advice">
        What stands there unless you type is common practice. A lamp counts where its level is another as the
        action begins, a half turn by the share of it that the camera is turned.
      </p>
    </section>
  );
}
