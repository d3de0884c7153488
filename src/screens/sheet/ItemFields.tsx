import { anchorOf, carrierOf } from '../../core/plan/edits/anchorOf';
import { moveItem } from '../../core/plan/edits/moveItem';
import { renameItem } from '../../core/plan/edits/renameItem';
import { setBaseHeight } from '../../core/plan/edits/setBaseHeight';
import { setStandHeight, standReach } from '../../core/plan/edits/setStandHeight';
import { setWish } from '../../core/plan/edits/setWish';
import { turnItem } from '../../core/plan/edits/turnItem';
import { type Item, itemOf, wishOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { wish as wishSchema } from '../../core/plan/schema/texts';
import { formatLength } from '../../core/units/lengths';
import { useLivePlan, useSession } from '../../desk/hooks';
import { planStore } from '../../desk/planStore';
import { Field, SelectField } from '../parts/Field';
import { HeadingField } from '../parts/HeadingField';
import { expectedSentence, LengthField } from '../parts/LengthField';

const edit = (name: string, change: (plan: Plan) => Plan): string | null =>
  expectedSentence(planStore.getState().edit(name, change));

/** Height of the foot above the deck, or of the middle of what hangs; null where a stand or a path decides it. */
function baseHeightOf(item: Item): number | null {
  const { record } = item;
  if ('at' in record) return record.at[1];
  return 'place' in record && 'at' in record.place ? record.place.at[1] : null;
}

function StandHeight({
  plan,
  id,
  metres,
}: {
  readonly plan: Plan;
  readonly id: string;
  readonly metres: number;
}) {
  const lengths = useSession((state) => state.lengths);
  const reach = standReach(plan, id);
  return (
    <LengthField
      label="height"
      metres={metres}
      commit={(heightMetres) => {
        if (reach && (heightMetres < reach.lowestMetres || heightMetres > reach.highestMetres)) {
          const [low, high] = [reach.lowestMetres, reach.highestMetres].map((end) =>
            formatLength(end, lengths),
          );
          return `This stand goes from ${low} to ${high}.`;
        }
        return edit('set the height', (before) => setStandHeight(before, { id, heightMetres }));
      }}
    />
  );
}

/** Where an item stands, typed; and what it should do in frame. */
export function ItemFields({ item }: { readonly item: Item }) {
  const plan = useLivePlan();
  const { id, label } = item.record;
  const anchor = anchorOf(plan, id);
  const carrier = carrierOf(plan, id);
  const base = baseHeightOf(item);
  const carrierLabel = carrier === null ? null : (itemOf(plan, carrier)?.record.label ?? null);
  return (
    <div className="where">
      <h3>{carrierLabel === null ? 'Where it stands' : `Where it stands, on ${carrierLabel}`}</h3>
      <div className="fields" key={id}>
        {anchor ? (
          <>
            <LengthField
              label="x, right"
              metres={anchor[0]}
              commit={(x) => edit('move', (before) => moveItem(before, { id, to: [x, anchor[1]] }))}
            />
            <LengthField
              label="z, down"
              metres={anchor[1]}
              commit={(z) => edit('move', (before) => moveItem(before, { id, to: [anchor[0], z] }))}
            />
          </>
        ) : null}
        {'headingDegrees' in item.record ? (
          <HeadingField
            label="heading"
            degrees={item.record.headingDegrees}
            commit={(headingDegrees) => edit('turn', (before) => turnItem(before, { id, headingDegrees }))}
          />
        ) : null}
        {item.section === 'gear' && item.record.kind === 'stand' ? (
          <StandHeight plan={plan} id={id} metres={item.record.heightMetres} />
        ) : null}
        {base === null ? null : (
          <LengthField
            label="off the deck"
            metres={base}
            commit={(metres) => edit('raise', (before) => setBaseHeight(before, { id, metres }))}
          />
        )}
        <SelectField
          wide
          label="in frame"
          value={wishOf(item)}
          onChange={(value) => {
            const wish = wishSchema.options.find((option) => option === value);
            if (wish) edit('set the wish', (before) => setWish(before, { id, wish }));
          }}
        >
          <option value="keep out">should keep out</option>
          <option value="either">may show</option>
          <option value="must show">must show</option>
        </SelectField>
        <Field
          wide
          label="name"
          text={label}
          commit={(text) => edit('rename', (before) => renameItem(before, { id, label: text.trim() }))}
        />
      </div>
    </div>
  );
}
