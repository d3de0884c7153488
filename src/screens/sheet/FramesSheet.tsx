import { itemOf } from '../../core/plan/items';
import { useLivePlan, useSession } from '../../desk/hooks';
import { Column } from '../parts/Column';
import { Findings } from './Findings';
import { ItemPanel } from './ItemPanel';
import { NightPanel } from './NightPanel';
import { Notices } from './Notices';
import { SeveralPanel } from './panels/SeveralPanel';

/** What each setup sees: at the left the chosen setup's findings, at the right the chosen item, or the whole night. */
export function FramesSheet() {
  const plan = useLivePlan();
  const selectedId = useSession((state) => state.selectedId);
  const selectedIds = useSession((state) => state.selectedIds);
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  const several = selectedIds.length > 1;
  return (
    <div className="two">
      <Column>
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
