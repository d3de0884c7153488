import type { Item } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { AimFields } from './AimFields';
import { Carries, canBeCarried, OnStand } from './Carries';
import { Holes } from './Holes';
import { Legs } from './Legs';
import { MarksList } from './MarksList';
import { Openings } from './Openings';

/** What an item has more than one of, and what it hangs together with: legs, openings, holes, marks, what a stand carries, an aim. */
export function Belongings({ plan, item }: { readonly plan: Plan; readonly item: Item }) {
  const { record } = item;
  if (item.section === 'cast') return <MarksList plan={plan} performer={item.record} />;
  if (item.section === 'gear') {
    const gear = item.record;
    return (
      <>
        {gear.kind === 'stand' ? <Carries plan={plan} standId={gear.id} /> : null}
        {canBeCarried(gear) ? (
          <section className="group">
            <h4>Held by</h4>
            <OnStand plan={plan} gear={gear} />
          </section>
        ) : null}
        {gear.kind === 'head' ? <AimFields plan={plan} head={gear} /> : null}
        {gear.kind === 'cable' ? <Legs plan={plan} id={gear.id} heading="Its way" /> : null}
        {gear.kind === 'bulb string' ? <Legs plan={plan} id={gear.id} heading="From end to end" /> : null}
      </>
    );
  }
  const piece = item.record;
  return (
    <>
      {piece.kind === 'deck' ? (
        <>
          <Legs plan={plan} id={record.id} heading="Its edges" />
          <Holes plan={plan} deck={piece} />
        </>
      ) : null}
      {piece.kind === 'wall' || piece.kind === 'parapet' || piece.kind === 'fence' ? (
        <>
          <Legs plan={plan} id={record.id} heading="Its legs" />
          <Openings run={piece} />
        </>
      ) : null}
      {piece.kind === 'line' ? <Legs plan={plan} id={record.id} heading="From end to end" /> : null}
    </>
  );
}
