import { itemOf } from '../../core/plan/items';
import { chooseSetup } from '../choose';
import { livePlan } from '../liveStore';
import { sessionStore } from '../sessionStore';
import { cautionsStore } from './cautionsStore';

/** Opens a caution and chooses what it is about: its things, or else its first setup. Null closes the one that is open. */
export function openCaution(key: string | null): void {
  cautionsStore.setState({ openKey: key });
  const caution = cautionsStore.getState().found?.find(({ id }) => id === key);
  if (!caution) return;
  const plan = livePlan();
  const ids = caution.itemIds.filter((id) => itemOf(plan, id) !== null);
  sessionStore.getState().setSelectedIds(ids);
  const [setupId] = caution.setupIds;
  if (ids.length === 0 && setupId !== undefined) chooseSetup(setupId);
}
