import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { useLivePlan } from '../../../desk/hooks';
import { followNight } from '../../../desk/night/asking';
import { nightStore } from '../../../desk/night/nightStore';
import { NIGHT_VIEWS, type NightView, nightViewStore } from '../../../desk/night/nightView';
import { Segmented } from '../../parts/Segmented';
import { CautionsView } from './cautions/CautionsView';
import { OrderView } from './order/OrderView';
import { WrapFigure } from './order/WrapFigure';
import { PackActs } from './pack/PackActs';
import { PackingView } from './packing/PackingView';
import { PowerView } from './power/PowerView';
import { PrintedNight } from './print/PrintedNight';
import { SkyView } from './sky/SkyView';
import './night.css';

const VIEWS = NIGHT_VIEWS.map((value) => ({ value, word: value }));

function Open({ view, plan }: { readonly view: NightView; readonly plan: Plan }) {
  if (view === 'order') return <OrderView plan={plan} />;
  if (view === 'power') return <PowerView plan={plan} />;
  if (view === 'packing') return <PackingView plan={plan} />;
  return view === 'sky' ? <SkyView plan={plan} /> : <CautionsView plan={plan} />;
}

/** The night's work: its order against dusk, power, what is packed, the sky, and what to be careful with. */
export function NightSheet() {
  const plan = useLivePlan();
  const view = useStore(nightViewStore, (state) => state.view);
  const trouble = useStore(nightStore, (state) => state.trouble);
  useEffect(followNight, []);
  return (
    <div className="night-sheet">
      <div className="night-bar">
        <Segmented
          label="What of the night is looked at"
          choices={VIEWS}
          chosen={view}
          onChoose={(chosen) => nightViewStore.setState({ view: chosen })}
        />
        {view === 'order' ? <WrapFigure plan={plan} /> : null}
        <PackActs plan={plan} />
      </div>
      {trouble === null ? null : (
        <p className="err night-trouble" role="alert">
          {trouble}
        </p>
      )}
      <div className="night-view">
        <Open view={view} plan={plan} />
      </div>
      <PrintedNight plan={plan} />
    </div>
  );
}
