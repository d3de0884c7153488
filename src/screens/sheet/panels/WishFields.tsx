import { setWish } from '../../../core/plan/edits/setWish';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Wish } from '../../../core/plan/schema/texts';
import { Segmented } from '../../parts/Segmented';
import { useEdit } from '../fields/edit';

const WISHES: readonly { readonly value: Wish; readonly word: string }[] = [
  { value: 'keep out', word: 'keep out' },
  { value: 'either', word: 'either' },
  { value: 'must show', word: 'must show' },
];

/** What one or several items should do in frame; nothing is pressed where they differ. */
export function WishFields({ ids, wish }: { readonly ids: readonly string[]; readonly wish: Wish | null }) {
  const edit = useEdit();
  const set = (plan: Plan, value: Wish): Plan =>
    ids.reduce((after, id) => setWish(after, { id, wish: value }), plan);
  return (
    <div className="wide switch">
      <span className="q" aria-hidden="true">
        in frame
      </span>
      <Segmented
        label="in frame"
        choices={WISHES}
        chosen={wish}
        onChoose={(value) => edit('set the wish', (plan) => set(plan, value))}
      />
    </div>
  );
}
