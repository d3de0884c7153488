import type { Plan } from '../../../core/plan/schema/plan';
import { CONTINUOUS_SHARE } from '../../../core/power/ratings';
import { listed } from '../../../core/report/listed';
import { ampWords } from '../../../core/report/power/powerWords';
import type { PowerReport, SourceReport } from '../../../core/report/power/types';
import { formatShare } from '../../../core/units/shares';
import { fuelText, sourceDetail, sourceText } from '../../sheet/night/power/words';
import { SupplyCard } from './SupplyCard';

/** All that gives power and all that divides it, a card each. */
export function Supplies({ plan, power }: { readonly plan: Plan; readonly power: PowerReport }) {
  const { sources, distros, circuits, hours, sentences } = power;
  const circuitsOf = (id: string) => circuits.filter(({ ownerId }) => ownerId === id);
  const worst = (id: string): number => Math.max(0, ...circuitsOf(id).map(({ share }) => share));
  const linesOf = (source: SourceReport): readonly string[] =>
    [sourceText(source), sourceDetail(source), fuelText(source, hours, plan.night?.call ?? null)].filter(
      (line) => line !== null,
    );
  const stopOf = (id: string): string | null =>
    sentences.find(({ about, itemIds }) => about === 'stop' && itemIds[0] === id)?.sentence ?? null;
  return (
    <section className="crew-section" aria-labelledby="supplies-title">
      <h3 id="supplies-title">
        Supplies, of what each gives for long; the tick is at {formatShare(CONTINUOUS_SHARE)}
      </h3>
      <ul>
        {sources.map((source) => (
          <SupplyCard
            key={source.id}
            plan={plan}
            id={source.id}
            label={source.label}
            share={source.share ?? worst(source.id)}
            lines={linesOf(source)}
            stop={stopOf(source.id)}
            circuits={circuitsOf(source.id)}
          />
        ))}
        {distros.map(({ id, label, share, sourceId, legAmps, inputAmps }) => (
          <SupplyCard
            key={id}
            plan={plan}
            id={id}
            label={label}
            share={share}
            lines={[
              sourceId === null
                ? 'has no power'
                : `${listed(legAmps.map(ampWords))} of ${ampWords(inputAmps)}`,
            ]}
            stop={null}
            circuits={circuitsOf(id)}
          />
        ))}
      </ul>
    </section>
  );
}
