import { type ComponentType, useEffect } from 'react';
import { CREW_TABS, type CrewTab } from '../../../desk/crew/place';
import { useCrew } from '../../../desk/crew/useCrew';
import { coming } from '../parts/coming/coming';
import { CrewSetups } from '../setups/CrewSetups';

type OtherTab = Exclude<CrewTab, 'setups'>;

/** What each other tab shows: loaded once the setups can be read, so that a press is answered at once. */
const LOAD: Readonly<Record<OtherTab, () => Promise<ComponentType>>> = {
  overhead: async () => (await import('../overhead/CrewOverhead')).CrewOverhead,
  power: async () => (await import('../power/CrewPower')).CrewPower,
  times: async () => (await import('../times/CrewTimes')).CrewTimes,
  lists: async () => (await import('../lists/CrewLists')).CrewLists,
};
const meanwhile = () => <p className="crew-none">One moment.</p>;
const SCREEN_OF: Readonly<Record<OtherTab, ComponentType>> = {
  overhead: coming(LOAD.overhead, { meanwhile }),
  power: coming(LOAD.power, { meanwhile }),
  times: coming(LOAD.times, { meanwhile }),
  lists: coming(LOAD.lists, { meanwhile }),
};

/** The screen of the chosen tab. `chosenId`: the setup that lies open beside it. */
export function CrewTabScreen({ chosenId }: { readonly chosenId: string | null }) {
  const tab = useCrew((state) => state.tab);
  useEffect(() => {
    for (const each of CREW_TABS) if (each !== 'setups') LOAD[each]().catch(() => {});
  }, []);
  if (tab === 'setups') return <CrewSetups chosenId={chosenId} />;
  const Screen = SCREEN_OF[tab];
  return <Screen />;
}
