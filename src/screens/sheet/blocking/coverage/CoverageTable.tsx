import type { Coverage } from '../../../../core/continuity/coverage';
import type { Plan } from '../../../../core/plan/schema/plan';
import { formatSeconds } from '../../../../core/units/seconds';
import { beatName, cellWords, rowName } from './words';

/** The chart for those who hear it: who is in which setup, from beat to beat. */
export function CoverageTable({ plan, coverage }: { readonly plan: Plan; readonly coverage: Coverage }) {
  const { intervals, rows } = coverage;
  return (
    // A table is as wide as its words, even where it is hidden: what is around it is not.
    <div className="vh">
      <table>
        <caption>Who is covered by which setup, from each beat to the next</caption>
        <thead>
          <tr>
            <th scope="col">who</th>
            {intervals.map(({ fromBeat, fromSeconds }) => (
              <th key={fromBeat} scope="col">
                from {beatName(plan, fromBeat)}, {formatSeconds(fromSeconds)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.performerIds.join(' ')}>
              <th scope="row">{rowName(plan, row)}</th>
              {row.cells.map((cell, place) => (
                <td key={intervals[place].fromBeat}>{cellWords(plan, cell, row.performerIds.length > 1)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
