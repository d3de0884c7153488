import { useStore } from 'zustand';
import type { Mover } from '../../../core/clearance/solve/movers';
import { itemOf, wishOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { setStays, solveStore } from '../../../desk/remedies/solveStore';

/** More that goes along than this is counted. */
const MOST_ALONG = 2;

/** `with Head 2 and Flag 1`; empty for what goes by itself. */
function alongWords(plan: Plan, { id, members }: Mover): string {
  const labels = [...members]
    .filter((each) => each !== id)
    .map((each) => itemOf(plan, each)?.record.label ?? each);
  if (labels.length === 0) return '';
  const told = labels.slice(0, MOST_ALONG);
  const more = labels.length - told.length;
  return more > 0 ? `with ${told.join(', ')} and ${more} more` : `with ${told.join(' and ')}`;
}

/** How many pieces of gear that should keep out are locked. */
const lockedIn = (plan: Plan): number =>
  plan.gear.filter((record) => record.locked === true && wishOf({ section: 'gear', record }) === 'keep out')
    .length;

/** Which things may move: each with all that goes along. */
export function Movable({ plan, movers }: { readonly plan: Plan; readonly movers: readonly Mover[] }) {
  const stays = useStore(solveStore, (state) => state.stays);
  const running = useStore(solveStore, (state) => state.running);
  const ids = movers.map(({ id }) => id);
  const locked = lockedIn(plan);
  if (movers.length === 0)
    return (
      <p className="q">
        {locked > 0
          ? 'All gear that should keep out is locked: unlock what may move.'
          : 'No gear on the roof that should keep out: there is nothing to move.'}
      </p>
    );
  const moving = ids.filter((id) => !stays.has(id)).length;
  return (
    <fieldset className="movable" disabled={running}>
      <legend>
        What may move, {moving} of {ids.length}
      </legend>
      <div className="acts-line">
        <button type="button" onClick={() => setStays(ids, false)}>
          All
        </button>
        <button type="button" onClick={() => setStays(ids, true)}>
          None
        </button>
      </div>
      <ul>
        {movers.map((mover) => (
          <li key={mover.id}>
            <label className="tick">
              <input
                type="checkbox"
                checked={!stays.has(mover.id)}
                onChange={(event) => setStays([mover.id], !event.currentTarget.checked)}
              />
              <span>
                {mover.label} <span className="q">{alongWords(plan, mover)}</span>
              </span>
            </label>
          </li>
        ))}
      </ul>
      {locked > 0 ? (
        <p className="q">{locked === 1 ? 'One locked thing stays.' : `${locked} locked things stay.`}</p>
      ) : null}
    </fieldset>
  );
}
