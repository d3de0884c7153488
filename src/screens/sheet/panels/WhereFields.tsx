import { anchorOf, carrierOf } from '../../../core/plan/edits/anchorOf';
import { moveItem } from '../../../core/plan/edits/moveItem';
import { setBaseHeight } from '../../../core/plan/edits/setBaseHeight';
import { turnItem } from '../../../core/plan/edits/turnItem';
import { type Item, itemOf } from '../../../core/plan/items';
import { useLivePlan } from '../../../desk/hooks';
import { HeadingField } from '../../parts/HeadingField';
import { LengthField } from '../../parts/LengthField';
import { useEdit } from '../fields/edit';
import { baseHeightOf } from './baseHeight';

/** Where an item stands and which way it faces, typed. */
export function WhereFields({ item }: { readonly item: Item }) {
  const plan = useLivePlan();
  const edit = useEdit();
  const { id } = item.record;
  // A camera that rides on a dolly says where it is.
  const isRidden = item.section === 'gear' && item.record.kind === 'dolly' && item.record.rides !== undefined;
  const anchor = isRidden ? null : anchorOf(plan, id);
  const carrier = carrierOf(plan, id);
  const base = isRidden ? null : baseHeightOf(item);
  const carrierLabel = carrier === null ? null : (itemOf(plan, carrier)?.record.label ?? null);
  const isTurned = 'headingDegrees' in item.record;
  if (!anchor && !isTurned && base === null) return null;
  return (
    <section className="group">
      <h4>{carrierLabel === null ? 'Where it stands' : `Where it stands, on ${carrierLabel}`}</h4>
      <div className="fields">
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
        {base === null ? null : (
          <LengthField
            label="off the deck"
            metres={base}
            commit={(metres) => edit('raise', (before) => setBaseHeight(before, { id, metres }))}
          />
        )}
      </div>
    </section>
  );
}
