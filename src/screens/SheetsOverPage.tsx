import { useStore } from 'zustand';
import { ownKitStore } from '../desk/kit/ownKitStore';
import { plansStore } from '../desk/plans/plansStore';
import { startsStore } from '../desk/startsStore';
import { lazily, useWasOpen } from './parts/lazily';

const PlansSheet = lazily(async () => (await import('./plans/PlansSheet')).PlansSheet);
const StartsSheet = lazily(async () => (await import('./starts/StartsSheet')).StartsSheet);
const KitSheet = lazily(async () => (await import('./sheet/kit/KitSheet')).KitSheet);

/** What opens over the whole page, each from when it is first opened. */
export function SheetsOverPage() {
  const plans = useWasOpen(useStore(plansStore, (state) => state.open));
  const starts = useWasOpen(useStore(startsStore, (state) => state.open));
  const kit = useWasOpen(useStore(ownKitStore, (state) => state.open));
  return (
    <>
      {plans && <PlansSheet />}
      {starts && <StartsSheet />}
      {kit && <KitSheet />}
    </>
  );
}
