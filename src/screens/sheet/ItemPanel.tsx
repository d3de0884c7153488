import { removeItem } from '../../core/plan/edits/removeItem';
import { type Item, kindOf } from '../../core/plan/items';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { Icon, iconOfKind } from '../parts/Icon';
import { ItemFields } from './ItemFields';
import { Standing } from './Standing';

function takeOut(item: Item): void {
  const { edit, undo } = planStore.getState();
  const { id, label } = item.record;
  const { say } = toastStore.getState();
  const faults = edit(`take out ${label}`, (plan) => removeItem(plan, { id }));
  if (faults[0]) {
    say(faults[0].sentence, { tone: 'warn' });
    return;
  }
  sessionStore.getState().setSelectedId(null);
  say(`${label} is out of the plan.`, { action: { word: 'Undo', act: undo } });
}

/** The chosen item: how it stands in every setup, where it is, and what it should do in frame. */
export function ItemPanel({ item, standing }: { readonly item: Item; readonly standing?: boolean }) {
  return (
    <>
      <h3 className="of-item">
        <Icon name={iconOfKind(kindOf(item))} />
        {item.record.label}, {kindOf(item)}
      </h3>
      {standing ? <Standing item={item} /> : null}
      <ItemFields item={item} />
      <p className="acts">
        <button type="button" className="bare" onClick={() => takeOut(item)}>
          Take it out
        </button>
      </p>
    </>
  );
}
