import { useMemo } from 'react';
import { standInWind } from '../../../../core/cautions/wind/wind';
import type { Item } from '../../../../core/plan/items';
import type { Plan } from '../../../../core/plan/schema/plan';
import { BagsButton } from './BagsButton';
import { CautionGlyph } from './CautionGlyph';
import './cautions.css';

/** In which wind a stand tips with what it carries and its bags, and the bags that hold it in the forecast. */
export function StandInWind({ plan, item }: { readonly plan: Plan; readonly item: Item }) {
  const stand = item.section === 'gear' && item.record.kind === 'stand' ? item.record : null;
  const caution = useMemo(() => (stand ? standInWind(plan, stand) : null), [plan, stand]);
  if (!stand) return null;
  return (
    <section className="group stand-in-wind">
      <h4>In the wind</h4>
      {caution ? (
        <p>
          <CautionGlyph standing={caution.standing} noted={false} />
          <span>
            {caution.sentence} <span className="q">{caution.decides}</span>
          </span>
        </p>
      ) : (
        <p>No wind tips it in which anybody works on a roof.</p>
      )}
      <div className="acts">
        <BagsButton plan={plan} standId={stand.id} />
      </div>
    </section>
  );
}
