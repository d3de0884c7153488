import { addLine } from '../../../../core/plan/edits/addLine';
import { changeLine } from '../../../../core/plan/edits/changeLine';
import type { Line } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import { withNames } from '../../../../core/plan/withNames';
import { editBlocking } from '../../../../desk/blocking/choosing';
import { letterOf } from '../../../../desk/choose';
import { SelectField } from '../../../parts/Field';
import { removeThing } from '../doing';
import { PersonChoice } from './choices';

function LineFields({ plan, line }: { readonly plan: Plan; readonly line: Line }) {
  const [one, other] = line.pair;
  const set = (patch: { readonly pair?: Line['pair']; readonly establishedBy?: string | undefined }): void =>
    void editBlocking('change a line', (before) => changeLine(before, { lineId: line.id, patch }));
  return (
    <div className="fields">
      <PersonChoice
        label="between"
        value={one}
        people={plan.cast.filter(({ id }) => id !== other)}
        onChange={(id) => set({ pair: [id, other] })}
      />
      <PersonChoice
        label="and"
        value={other}
        people={plan.cast.filter(({ id }) => id !== one)}
        onChange={(id) => set({ pair: [one, id] })}
      />
      <SelectField
        label="established by"
        value={line.establishedBy ?? ''}
        onChange={(id) => set({ establishedBy: id === '' ? undefined : id })}
      >
        <option value="">the first that frames both</option>
        {withNames(plan).setups.map(({ id, label }) => (
          <option key={id} value={id}>
            {letterOf(plan, id)} {label}
          </option>
        ))}
      </SelectField>
    </div>
  );
}

/** The first two performers whose line is not drawn yet. */
function freePair({ cast, lines = [] }: Plan): Line['pair'] | null {
  const isDrawn = (a: string, b: string): boolean =>
    lines.some(({ pair }) => pair.includes(a) && pair.includes(b));
  for (const [k, { id: one }] of cast.entries()) {
    const other = cast.slice(k + 1).find(({ id }) => !isDrawn(one, id));
    if (other) return [one, other.id];
  }
  return null;
}

/** The lines that cameras keep to one side of, each between a pair. */
export function Lines({ plan }: { readonly plan: Plan }) {
  const lines = plan.lines ?? [];
  const pair = freePair(plan);
  return (
    <section className="group">
      <h4>{lines.length === 0 ? 'No line is drawn' : 'Lines'}</h4>
      {lines.map((line, k) => (
        <section key={line.id} className="group" aria-label={`Line ${k + 1}`}>
          <LineFields plan={plan} line={line} />
          <p className="acts">
            <button
              type="button"
              className="bare"
              onClick={() => removeThing(plan, { type: 'line', lineId: line.id })}
            >
              Take it out<span className="vh">, line {k + 1}</span>
            </button>
          </p>
        </section>
      ))}
      {pair ? (
        <p className="acts">
          <button
            type="button"
            onClick={() => editBlocking('draw a line', (before) => addLine(before, { pair }))}
          >
            {lines.length === 0 ? 'Draw a line' : 'Another line'}
          </button>
        </p>
      ) : (
        <p className="advice">
          {plan.cast.length < 2 ? 'A line needs two people.' : 'Every pair has its line.'}
        </p>
      )}
    </section>
  );
}
