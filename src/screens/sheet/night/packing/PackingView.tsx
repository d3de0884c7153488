import { useStore } from 'zustand';
import type { PackingLine } from '../../../../core/night/packing/types';
import type { Plan } from '../../../../core/plan/schema/plan';
import { nightStore } from '../../../../desk/night/nightStore';
import { saveNightCsv } from '../../../../desk/night/savingNight';
import { useNight } from '../../../../desk/night/useNight';
import { sessionStore } from '../../../../desk/sessionStore';
import { Column } from '../../../parts/Column';
import { PackingRules } from './PackingRules';
import { allOf, amountText, byDepartment, listTotal, spareText } from './packingWords';
import './packing.css';

/** What a line is and what it adds up from; pressed, that is chosen on the roof. */
function What({ line }: { readonly line: PackingLine }) {
  const { label, detail, itemIds } = line;
  const words = (
    <span className="sentence">
      {label}
      {detail === '' ? null : <small>{detail}</small>}
    </span>
  );
  if (itemIds.length === 0) return words;
  return (
    <button type="button" onClick={() => sessionStore.getState().setSelectedIds(itemIds)}>
      {words}
      <span className="vh">, show on the roof</span>
    </button>
  );
}

function List({ lines }: { readonly lines: readonly PackingLine[] }) {
  return (
    <table className="packing-list">
      <caption className="vh">The packing list</caption>
      <thead className="vh">
        <tr>
          <th scope="col">what</th>
          <th scope="col">to take</th>
        </tr>
      </thead>
      {byDepartment(lines).map((group) => (
        <tbody key={group.department}>
          <tr>
            <th colSpan={2} scope="rowgroup">
              {group.department}, {listTotal(group.lines)}
            </th>
          </tr>
          {group.lines.map((line) => (
            <tr key={`${line.label} ${line.detail}`}>
              <td>
                <What line={line} />
              </td>
              <td className="amount">
                <b>{amountText(allOf(line), line.unit)}</b>
                <small>{spareText(line)}</small>
              </td>
            </tr>
          ))}
        </tbody>
      ))}
    </table>
  );
}

/** All that is carried up for the night, by department, and the rules by which it is counted. */
export function PackingView({ plan }: { readonly plan: Plan }) {
  const night = useNight(plan);
  const answer = useStore(nightStore, (state) => state.answer);
  if (!answer) return <p className="night-empty">The packing list is being added up.</p>;
  const { packing } = answer;
  return (
    <Column>
      <div className="night-packing" aria-busy={answer.plan !== plan}>
        <div>
          {packing.length === 0 ? (
            <p className="night-empty">Nothing to pack yet: there is no gear on the roof.</p>
          ) : (
            <List lines={packing} />
          )}
        </div>
        <div>
          <p className="figure">
            {packing.length}
            <small>
              {packing.length === 1 ? 'line' : 'lines'} to pack, {listTotal(packing).split(', ')[1]}
            </small>
          </p>
          <p className="acts">
            <button
              type="button"
              disabled={!night}
              onClick={() => {
                if (night) void saveNightCsv(plan, night, packing);
              }}
            >
              Save as a table
            </button>
            <button type="button" onClick={() => window.print()}>
              Print
            </button>
          </p>
          <PackingRules plan={plan} />
          <p className="advice">
            An estimate for planning. What is asked for by law, and how much is enough, local codes and a
            competent person decide.
          </p>
        </div>
      </div>
    </Column>
  );
}
