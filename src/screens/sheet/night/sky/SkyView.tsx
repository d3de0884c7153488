import { useStore } from 'zustand';
import type { Plan } from '../../../../core/plan/schema/plan';
import { nightStore } from '../../../../desk/night/nightStore';
import { useNight } from '../../../../desk/night/useNight';
import { Column } from '../../../parts/Column';
import { SkyPanel } from '../../sky/SkyPanel';
import { DarkFromList } from './DarkFromList';
import { DuskCurve } from './DuskCurve';
import { PlacePart } from './PlacePart';
import './sky.css';

/** The sky over the night: how light it is through dusk, from when stands are lost, and where all that is. */
export function SkyView({ plan }: { readonly plan: Plan }) {
  const night = useNight(plan);
  const answer = useStore(nightStore, (state) => state.answer);
  return (
    <Column>
      <div className="night-sky">
        <div>
          {night && answer ? (
            <DuskCurve plan={answer.plan} night={answer.night} dusk={answer.dusk} />
          ) : (
            <p className="advice">The sky is being worked out.</p>
          )}
          <DarkFromList plan={plan} />
        </div>
        <div>
          <SkyPanel plan={plan} />
          <PlacePart plan={plan} />
        </div>
      </div>
    </Column>
  );
}
