import { addOpening } from '../../../core/plan/edits/addOpening';
import { removeOpening } from '../../../core/plan/edits/removeOpening';
import { setOpening } from '../../../core/plan/edits/setOpening';
import { runLength } from '../../../core/plan/runs';
import type { Opening, Piece } from '../../../core/plan/schema/pieces';
import { formatLength } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { pickTool } from '../../../desk/tools/drawing';
import { LengthField } from '../../parts/LengthField';
import { useEdit } from '../fields/edit';
import { newOpening, openingRoom } from './openingRoom';

type Run = Extract<Piece, { openings?: unknown }>;

const FIELDS: readonly (readonly [key: Exclude<keyof Opening, 'id'>, label: string])[] = [
  ['widthMetres', 'width'],
  ['heightMetres', 'height'],
  ['alongMetres', 'along'],
  ['sillMetres', 'sill'],
];

function OneOpening({
  run,
  opening,
  number,
}: {
  readonly run: Run;
  readonly opening: Opening;
  readonly number: number;
}) {
  const edit = useEdit();
  const lengths = useSession((state) => state.lengths);
  const { id: openingId } = opening;
  return (
    <li>
      <div className="of-part">
        <span>opening {number}</span>
        <button
          type="button"
          className="bare"
          onClick={() => edit('close an opening', (plan) => removeOpening(plan, { id: run.id, openingId }))}
        >
          Close it<span className="vh"> opening {number}</span>
        </button>
      </div>
      <div className="fields">
        {FIELDS.map(([key, label]) => (
          <LengthField
            key={key}
            label={label}
            metres={opening[key]}
            commit={(metres) => {
              const room = openingRoom(run, opening, key);
              if (metres < room[0] || metres > room[1]) {
                const [low, high] = room.map((end) => formatLength(end, lengths));
                return `In this ${run.kind} it goes from ${low} to ${high}.`;
              }
              return edit('set an opening', (plan) =>
                setOpening(plan, { id: run.id, openingId, patch: { [key]: metres } }),
              );
            }}
          />
        ))}
      </div>
    </li>
  );
}

/** The ways through a wall, a parapet or a fence: gates, doors, windows. */
export function Openings({ run }: { readonly run: Run }) {
  const edit = useEdit();
  const { openings = [] } = run;
  const length = runLength(run.path, run.closed);
  return (
    <section className="group">
      <h4>{openings.length === 0 ? 'No opening yet' : 'Openings'}</h4>
      <ul className="parts-of">
        {openings.map((opening, index) => (
          <OneOpening key={opening.id} run={run} opening={opening} number={index + 1} />
        ))}
      </ul>
      <p className="acts">
        <button
          type="button"
          onClick={() =>
            edit('cut an opening', (plan) => addOpening(plan, { id: run.id, ...newOpening(run, length) }))
          }
        >
          Cut an opening
        </button>
        <button type="button" className="bare" onClick={() => pickTool({ type: 'opening', itemId: run.id })}>
          Point it out on the roof
        </button>
      </p>
    </section>
  );
}
