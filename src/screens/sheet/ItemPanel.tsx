import { removeItem } from '../../core/plan/edits/removeItem';
import { type Item, kindOf, wishOf } from '../../core/plan/items';
import { useLivePlan, useSession } from '../../desk/hooks';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { Icon, iconOfItem } from '../parts/Icon';
import { FieldGroups } from './fields/FieldOf';
import { fieldsOf } from './fields/fieldsOf';
import { Marks } from './list/Marks';
import { NameField } from './panels/NameFields';
import { WhereFields } from './panels/WhereFields';
import { WishFields } from './panels/WishFields';
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

/** The chosen item: how it stands in every setup, what it is, where it is, and what it should do in frame. */
export function ItemPanel({ item, standing }: { readonly item: Item; readonly standing?: boolean }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const { id, label } = item.record;
  return (
    <div className="item-panel" key={id}>
      <h3 className="of-item stays">
        <Icon name={iconOfItem(plan.kit, item)} />
        <span className="name">
          {label}, {kindOf(item)}
        </span>
        <Marks item={item} reachable />
      </h3>
      {standing ? <Standing item={item} /> : null}
      <FieldGroups groups={fieldsOf(plan, item, lengths)} />
      <WhereFields item={item} />
      <section className="group">
        <h4>In frame, and its name</h4>
        <div className="fields">
          <WishFields ids={[id]} wish={wishOf(item)} />
          <NameField id={id} label={label} />
        </div>
      </section>
      <p className="acts">
        <button type="button" className="bare" onClick={() => takeOut(item)}>
          Take it out
        </button>
      </p>
    </div>
  );
}
