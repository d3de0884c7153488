import { type Item, nameOf } from '../../../core/plan/items';
import { planStore } from '../../../desk/planStore';
import { sessionStore } from '../../../desk/sessionStore';
import { Icon } from '../../parts/Icon';
import { itemsInGroup, setHidden, setLocked } from './marking';

/** The small marks of a row: locked, hidden, one of a group. A mark that is set always shows. */
export function Marks({ item, reachable }: { readonly item: Item; readonly reachable: boolean }) {
  const { id, locked = false, hidden = false, group } = item.record;
  const name = nameOf(item);
  const tabIndex = reachable ? 0 : -1;
  return (
    <span className="marks-of">
      {group === undefined ? null : (
        <button
          type="button"
          className="mark"
          tabIndex={tabIndex}
          aria-pressed="true"
          title="choose its group"
          onClick={() =>
            sessionStore.getState().setSelectedIds(itemsInGroup(planStore.getState().plan, group, id))
          }
        >
          <Icon name="group" />
          <span className="vh">choose the group of {name}</span>
        </button>
      )}
      <button
        type="button"
        className="mark"
        tabIndex={tabIndex}
        aria-pressed={locked}
        title={locked ? 'unlock' : 'lock'}
        onClick={() => setLocked([id], !locked)}
      >
        <Icon name={locked ? 'lock' : 'unlock'} />
        <span className="vh">lock {name}</span>
      </button>
      <button
        type="button"
        className="mark"
        tabIndex={tabIndex}
        aria-pressed={hidden}
        title={hidden ? 'bring back to the roof' : 'hide on the roof'}
        onClick={() => setHidden([id], !hidden)}
      >
        <Icon name={hidden ? 'hidden' : 'eye'} />
        <span className="vh">hide {name}</span>
      </button>
    </span>
  );
}
