import { areaOf } from '../../../core/plan/areas';
import { removeHole } from '../../../core/plan/edits/removeHole';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import { useSession } from '../../../desk/hooks';
import { pickTool } from '../../../desk/tools/drawing';
import { areaText } from '../fields/areaText';
import { useEdit } from '../fields/edit';
import { Legs } from './Legs';

/** The holes of a deck with what they measure, and a new one to draw. */
export function Holes({
  plan,
  deck,
}: {
  readonly plan: Plan;
  readonly deck: Extract<Piece, { kind: 'deck' }>;
}) {
  const edit = useEdit();
  const lengths = useSession((state) => state.lengths);
  const { holes = [] } = deck;
  return (
    <section className="group">
      <h4>{holes.length === 0 ? 'No hole yet' : 'Holes'}</h4>
      <ul className="parts-of">
        {holes.map((hole, index) => (
          <li key={hole.id}>
            <div className="of-part">
              <span>
                hole {index + 1}, {areaText(areaOf(hole.outline), lengths)}
              </span>
              <button
                type="button"
                className="bare"
                onClick={() =>
                  edit('close a hole', (before) => removeHole(before, { id: deck.id, holeId: hole.id }))
                }
              >
                Close it<span className="vh"> hole {index + 1}</span>
              </button>
            </div>
            <Legs plan={plan} id={deck.id} hole={hole.id} heading="Its edges" />
          </li>
        ))}
      </ul>
      <p className="acts">
        <button type="button" onClick={() => pickTool({ type: 'draw', entryId: 'deck-hole' })}>
          Draw a hole
        </button>
      </p>
    </section>
  );
}
