import { itemOf } from '../../core/plan/items';
import { useLivePlan, useSession } from '../../desk/hooks';
import { Findings } from './Findings';
import { ItemPanel } from './ItemPanel';
import { NightPanel } from './NightPanel';

/** What each setup sees: at the left the chosen setup's findings, at the right the chosen item, or the whole night. */
export function FramesSheet() {
  const plan = useLivePlan();
  const selectedId = useSession((state) => state.selectedId);
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  return (
    <div className="two">
      <div className="column">
        <Findings />
      </div>
      <div className="column">{item ? <ItemPanel item={item} standing /> : <NightPanel />}</div>
    </div>
  );
}
