import { itemOf, wishOf } from '../../../core/plan/items';
import { setupsInOrder } from '../../../core/plan/nightOrder';
import type { Plan } from '../../../core/plan/schema/plan';
import { VERDICTS, type Verdict } from '../../../core/report/types';
import { letterIn } from '../../../desk/crew/overhead/roofThings';
import { useCrewReading } from '../../../desk/crew/useCrew';
import { Glyph } from '../../parts/Glyph';

const SAYS: Readonly<Record<Verdict, string>> = {
  showing: 'shows in',
  mirrored: 'is mirrored in',
  'lost in the dark': 'is lost in the dark in',
  covered: 'is covered in',
  close: 'is close in',
  clear: 'is clear of',
};

/** In which setups something is seen, and how: it and what it carries, the worst of them for each setup. */
export function Frames({ plan, ids }: { readonly plan: Plan; readonly ids: readonly string[] }) {
  const reports = useCrewReading((state) => state.setups);
  const item = itemOf(plan, ids[0] ?? '');
  if (!item) return null;
  const order = setupsInOrder(plan);
  const read = order.flatMap(({ id }) => {
    const found = reports.get(id)?.items.filter((each) => ids.includes(each.id)) ?? [];
    const worst = VERDICTS.find((verdict) => found.some((each) => each.verdict === verdict));
    return worst ? [{ letter: letterIn(plan, id), verdict: worst }] : [];
  });
  const wish = wishOf(item);
  const lines = VERDICTS.flatMap((verdict) => {
    const letters = read.filter((each) => each.verdict === verdict).map(({ letter }) => letter);
    return letters.length > 0 ? [{ verdict, letters }] : [];
  });
  return (
    <section className="crew-item-part" aria-label="In frame">
      <h3>In frame</h3>
      {/* Of the cast nobody asks whether they may be seen. */}
      {item.section === 'cast' ? null : (
        <p className="crew-second">
          {wish === 'keep out'
            ? 'It has to keep out of every frame.'
            : wish === 'must show'
              ? 'It has to show.'
              : 'It may show or not.'}
        </p>
      )}
      <ul className="crew-frames">
        {lines.map(({ verdict, letters }) => (
          <li key={verdict}>
            <Glyph verdict={verdict} />
            <span>
              {SAYS[verdict]} <b>{letters.join(', ')}</b>
            </span>
          </li>
        ))}
      </ul>
      {read.length < order.length && <p className="crew-second">Setups are being read.</p>}
    </section>
  );
}
