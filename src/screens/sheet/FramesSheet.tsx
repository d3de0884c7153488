import { useStore } from 'zustand';
import { itemOf } from '../../core/plan/items';
import { useLivePlan, useSession } from '../../desk/hooks';
import { Column } from '../parts/Column';
import { ContactSheet } from './contact/ContactSheet';
import { Findings } from './Findings';
import { ItemPanel } from './ItemPanel';
import { FramesSwitch } from './lensTest/FramesSwitch';
import { framesViewStore } from './lensTest/framesView';
import { LensTest } from './lensTest/LensTest';
import { NightPanel } from './NightPanel';
import { Notices } from './Notices';
import { SeveralPanel } from './panels/SeveralPanel';

/** What each setup sees: its findings, what other lenses would see, or all setups side by side. */
export function FramesSheet() {
  const { view } = useStore(framesViewStore);
  if (view === 'lens test') return <LensTest />;
  return view === 'contact sheet' ? <ContactSheet /> : <FindingsView />;
}

/** At the left the chosen setup's findings, at the right the chosen item, or the whole night. */
function FindingsView() {
  const plan = useLivePlan();
  const selectedId = useSession((state) => state.selectedId);
  const selectedIds = useSession((state) => state.selectedIds);
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  const several = selectedIds.length > 1;
  return (
    <div className="two">
      <Column>
        <div className="frames-head">
          <FramesSwitch />
        </div>
        <Notices />
        <Findings />
      </Column>
      <Column>
        {several ? (
          <SeveralPanel plan={plan} items={selectedIds.flatMap((id) => itemOf(plan, id) ?? [])} />
        ) : item ? (
          <ItemPanel item={item} standing />
        ) : (
          <NightPanel />
        )}
      </Column>
    </div>
  );
}
