import { type Item, kindOf, nameOf, wishOf } from '../../core/plan/items';
import { useLivePlan, useSession } from '../../desk/hooks';
import { ActionButtons } from '../actions/ActionButtons';
import { Icon, iconOfItem } from '../parts/Icon';
import { lightSentence } from './drawing/facts';
import { FieldGroups } from './fields/FieldOf';
import { fieldsOf } from './fields/fieldsOf';
import { ModelPanel } from './import/ModelPanel';
import { Marks } from './list/Marks';
import { StandInWind } from './night/cautions/StandInWind';
import { Belongings } from './panels/Belongings';
import { NameField } from './panels/NameFields';
import { WhereFields } from './panels/WhereFields';
import { WishFields } from './panels/WishFields';
import { MeasuredLight } from './photometry/MeasuredLight';
import { Standing } from './Standing';

/** The chosen item: how it stands in every setup, what it is, where it is, and what it should do in frame. */
export function ItemPanel({ item, standing }: { readonly item: Item; readonly standing?: boolean }) {
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const { id, label } = item.record;
  const name = nameOf(item);
  const light = lightSentence(item);
  return (
    <div className="item-panel" key={id}>
      <h3 className="of-item stays">
        <Icon name={iconOfItem(plan.kit, item)} />
        <span className="name">
          {name.toLowerCase() === kindOf(item) ? name : `${name}, ${kindOf(item)}`}
        </span>
        <Marks item={item} reachable />
      </h3>
      {standing ? <Standing item={item} /> : null}
      <FieldGroups groups={fieldsOf(plan, item, lengths)} />
      {light === null ? null : <p className="advice">{light}</p>}
      <StandInWind plan={plan} item={item} />
      <Belongings plan={plan} item={item} />
      {item.section === 'piece' && item.record.kind === 'model' ? <ModelPanel item={item.record} /> : null}
      {item.section === 'gear' && 'head' in item.record ? (
        <MeasuredLight plan={plan} gear={item.record} />
      ) : null}
      <WhereFields item={item} />
      <section className="group">
        <h4>In frame, and its name</h4>
        <div className="fields">
          <WishFields ids={[id]} wish={wishOf(item)} />
          <NameField id={id} label={label} />
        </div>
      </section>
      <ActionButtons ids={[id]} />
    </div>
  );
}
