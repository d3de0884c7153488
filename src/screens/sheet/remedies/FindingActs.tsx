import type { ItemReport } from '../../../core/report/types';
import { isInTheWay, isLetShow } from '../../report/concerns';
import { LetItShow, LetShow } from './LetItShow';
import { Remedies } from './Remedies';
import { Why } from './Why';
import '../acts.css';
import './remedies.css';

/** What belongs to an opened finding: why it is one, what would take care of it, and letting it show. */
export function FindingActs({ item, setupId }: { readonly item: ItemReport; readonly setupId: string }) {
  const isOpen = isInTheWay(item) && !isLetShow(item);
  return (
    <li className="finding-acts">
      <div className="acts">
        <Why setupId={setupId} itemId={item.id} label={item.label} />
      </div>
      {isLetShow(item) ? <LetShow item={item} setupId={setupId} /> : null}
      {isOpen ? <Remedies setupId={setupId} itemId={item.id} /> : null}
      {isOpen ? <LetItShow item={item} setupId={setupId} /> : null}
    </li>
  );
}
