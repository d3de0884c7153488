import { CREW_TABS, type CrewTab } from '../../../desk/crew/place';
import { useCrew } from '../../../desk/crew/useCrew';
import { Icon, type IconName } from '../../parts/Icon';

const ICON_OF: Readonly<Record<CrewTab, IconName>> = {
  setups: 'setups',
  overhead: 'overhead',
  power: 'generator',
  times: 'times',
  lists: 'cart',
};
const WORD_OF: Readonly<Record<CrewTab, string>> = {
  setups: 'Setups',
  overhead: 'Overhead',
  power: 'Power',
  times: 'Times',
  lists: 'Lists',
};

/** The crew sheet's screens along the foot, under a thumb. */
export function CrewFoot() {
  const tab = useCrew((state) => state.tab);
  const go = useCrew((state) => state.go);
  return (
    <nav className="crew-foot" aria-label="Crew sheet">
      {CREW_TABS.map((each) => (
        <button
          key={each}
          type="button"
          aria-current={each === tab ? 'page' : undefined}
          onClick={() => go(each)}
        >
          <Icon name={ICON_OF[each]} />
          {WORD_OF[each]}
        </button>
      ))}
    </nav>
  );
}
