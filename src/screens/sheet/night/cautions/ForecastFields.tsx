import { gustOf, usualGust } from '../../../../core/cautions/wind/gust';
import { windWords } from '../../../../core/cautions/words';
import { setForecast } from '../../../../core/plan/edits/setForecast';
import { CAUTION_LIMITS, type Forecast } from '../../../../core/plan/schema/cautions';
import type { Plan } from '../../../../core/plan/schema/plan';
import { editPlan } from '../../fields/edit';
import { AmountIn } from './AmountIn';
import { WIND } from './units';

const forecast = (name: string, wind: Forecast | null): string | null =>
  editPlan(name, (plan) => setForecast(plan, { wind }));

/** The wind that is forecast: its mean, and its gust where the forecast has one. */
export function ForecastFields({ plan }: { readonly plan: Plan }) {
  const wind = plan.cautions?.wind;
  const gust = gustOf(plan);
  return (
    <section className="group forecast">
      <h4>The wind that is forecast</h4>
      <div className="fields">
        <AmountIn
          label="wind"
          units={WIND}
          value={wind?.metresPerSecond}
          most={CAUTION_LIMITS.windMetresPerSecond[1]}
          commit={(metresPerSecond) =>
            metresPerSecond === undefined
              ? forecast('take the forecast away', null)
              : forecast('say the forecast wind', { ...wind, metresPerSecond })
          }
        />
        <AmountIn
          label="gust"
          units={WIND}
          value={wind?.gustMetresPerSecond}
          {...(wind ? { usual: usualGust(wind.metresPerSecond) } : {})}
          most={CAUTION_LIMITS.gustMetresPerSecond[1]}
          commit={(gustMetresPerSecond) => {
            if (gustMetresPerSecond === undefined)
              return wind ? forecast('take the gust away', { metresPerSecond: wind.metresPerSecond }) : null;
            if (!wind) return 'Type the mean wind first: gusts are told beside it.';
            return forecast('say the forecast gust', { ...wind, gustMetresPerSecond });
          }}
        />
      </div>
      <p className="advice">
        {gust === null
          ? 'Type the mean wind of the forecast: each stand is then held against its gusts. A high roof has more wind than a forecast says.'
          : `Stands are held against gusts of ${windWords(gust)}. A high roof has more wind than a forecast says: measure it up there.`}
      </p>
    </section>
  );
}
