import { labelItems } from '../../../core/plan/edits/labelItems';
import { setBaseHeight } from '../../../core/plan/edits/setBaseHeight';
import { standReach } from '../../../core/plan/edits/setStandHeight';
import { turnItem } from '../../../core/plan/edits/turnItem';
import { type Item, kindOf, wishOf } from '../../../core/plan/items';
import { named } from '../../../core/plan/named';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { parseShare } from '../../../core/units/shares';
import { useSession } from '../../../desk/hooks';
import { ActionButtons } from '../../actions/ActionButtons';
import { Field } from '../../parts/Field';
import { firstSentence } from '../../parts/faultSentence';
import { HeadingField } from '../../parts/HeadingField';
import { Icon } from '../../parts/Icon';
import { LengthField } from '../../parts/LengthField';
import { reshaped } from '../fields/build';
import { editPlan } from '../fields/edit';
import { baseHeightOf } from './baseHeight';
import { commonOf, numberOf, sharedOf } from './common';
import { WishFields } from './WishFields';

/** What several are together: `5 stands`, `3 things`. */
function countWords(items: readonly Item[]): string {
  const kind = commonOf(items, kindOf);
  const word = sharedOf(kind) ?? 'thing';
  return `${items.length} ${word === 'box' ? 'boxe' : word}s chosen`;
}

/** Several chosen things: how many, what they have in common, and what can be done to all of them in one step. */
export function SeveralPanel({ plan, items }: { readonly plan: Plan; readonly items: readonly Item[] }) {
  const lengths = useSession((state) => state.lengths);
  const ids = items.map((item) => item.record.id);
  const all = (name: string, change: (plan: Plan, id: string) => Plan): string | null =>
    editPlan(name, (before) => ids.reduce(change, before));
  const heading = commonOf(items, (item) => numberOf(item, 'headingDegrees'));
  const height = commonOf(items, (item) => numberOf(item, 'heightMetres'));
  const base = commonOf(items, baseHeightOf);
  const dim = commonOf(items, (item) => numberOf(item, 'dim'));

  const setHeight = (heightMetres: number): string | null => {
    for (const { record } of items) {
      const reach = standReach(plan, record.id);
      if (!reach || (heightMetres >= reach.lowestMetres && heightMetres <= reach.highestMetres)) continue;
      const [low, high] = [reach.lowestMetres, reach.highestMetres].map((end) => formatLength(end, lengths));
      return `${named(record.label)} goes from ${low} to ${high}.`;
    }
    return all('set the heights', (before, id) => reshaped(before, id, { heightMetres }));
  };
  const dimValue = sharedOf(dim);
  return (
    <div className="item-panel">
      <h3 className="of-item stays">
        <Icon name="group" />
        <span className="name">{countWords(items)}</span>
      </h3>
      <section className="group">
        <h4>What they have in common</h4>
        <div className="fields">
          {height === null ? null : (
            <LengthField label="height" metres={sharedOf(height)} empty="mixed" commit={setHeight} />
          )}
          {heading === null ? null : (
            <HeadingField
              label="heading"
              degrees={sharedOf(heading)}
              empty="mixed"
              commit={(headingDegrees) =>
                all('turn', (before, id) => turnItem(before, { id, headingDegrees }))
              }
            />
          )}
          {base === null ? null : (
            <LengthField
              label="off the deck"
              metres={sharedOf(base)}
              empty="mixed"
              commit={(metres) => all('raise', (before, id) => setBaseHeight(before, { id, metres }))}
            />
          )}
          {dim === null ? null : (
            <Field
              label="dim"
              text={dimValue === null ? '' : String(Math.round(dimValue * 1000) / 10)}
              unit="%"
              empty="mixed"
              commit={(text) => {
                const read = parseShare(text);
                if (!read.ok) return firstSentence(read.faults);
                return all('dim', (before, id) => reshaped(before, id, { dim: read.value }));
              }}
            />
          )}
          <WishFields ids={ids} wish={sharedOf(commonOf(items, wishOf))} />
          <Field
            wide
            label="number them as"
            text=""
            empty="lamp stand"
            commit={(stem) => editPlan('number', (before) => labelItems(before, { ids, stem }))}
          />
        </div>
      </section>
      <ActionButtons ids={ids} />
    </div>
  );
}
