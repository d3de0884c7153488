import { useEffect, useRef } from 'react';
import { useStore } from 'zustand';
import { DECIDES } from '../../../../core/cautions/caution';
import type { Plan } from '../../../../core/plan/schema/plan';
import { cautionsStore, notedKeys } from '../../../../desk/cautions/cautionsStore';
import { Column } from '../../../parts/Column';
import { CautionList } from './CautionList';
import { ForecastFields } from './ForecastFields';
import { LoadFields } from './LoadFields';
import { WaysOutFields } from './WaysOutFields';
import { countSentence } from './words';
import '../../remedies/remedies.css';
import './cautions.css';

/** What on this roof can hurt somebody, and what the plan has to be told to say so: the wind, the ways out, the roof's load. */
export function CautionsView({ plan }: { readonly plan: Plan }) {
  const found = useStore(cautionsStore, (state) => state.found);
  const trouble = useStore(cautionsStore, (state) => state.trouble);
  const forecast = useRef<HTMLDivElement>(null);
  useEffect(() => {
    cautionsStore.setState({ shown: true });
    return () => cautionsStore.setState({ shown: false, openKey: null });
  }, []);
  return (
    <div className="two cautions-view">
      <Column>
        <p className="caution-count" role="status">
          {found ? countSentence(found, notedKeys(plan)) : 'The roof is being looked over.'}
        </p>
        <p className="advice">{DECIDES}</p>
        <p className="acts to-forecast">
          <button type="button" onClick={() => forecast.current?.scrollIntoView({ block: 'start' })}>
            Go to the forecast, the ways out and the load
          </button>
        </p>
        {trouble === null ? null : (
          <p className="err" role="alert">
            {trouble}
          </p>
        )}
        {found ? <CautionList plan={plan} cautions={found} /> : null}
      </Column>
      <Column>
        <div ref={forecast}>
          <ForecastFields plan={plan} />
        </div>
        <WaysOutFields plan={plan} />
        <LoadFields plan={plan} />
      </Column>
    </div>
  );
}
