import { type Chosen, WHERE_WORDS, type Where } from './rows';
import { rowKey } from './useKitFocus';

export interface KitRow {
  readonly id: string;
  readonly label: string;
  readonly set: string | undefined;
  readonly facts: string;
  /** What it is used for, or that the plan has it. */
  readonly mark: string;
}

const WHERES: readonly Where[] = ['plan', 'kept', 'built in'];

/** Bodies or lenses by where they are; one of them is chosen. */
export function KitList(props: {
  readonly rows: Readonly<Record<Where, readonly KitRow[]>>;
  readonly chosen: Chosen | null;
  readonly choose: (chosen: Chosen) => void;
}) {
  const { rows, chosen, choose } = props;
  return (
    <div className="kit-list">
      {WHERES.map((where) => (
        <section key={where}>
          <h3>{WHERE_WORDS[where]}</h3>
          {rows[where].length === 0 ? (
            <p className="q">
              {where === 'kept'
                ? 'Nothing yet. Add one, copy one, or import a file.'
                : 'Nothing yet. Put one in the plan.'}
            </p>
          ) : (
            <ul>
              {rows[where].map(({ id, label, set, facts, mark }) => (
                <li key={id}>
                  <button
                    type="button"
                    className="kit-row"
                    data-row={rowKey({ where, id })}
                    aria-pressed={chosen?.where === where && chosen.id === id}
                    onClick={() => choose({ where, id })}
                  >
                    <b>{set === undefined ? label : `${set}, ${label}`}</b>
                    <span className="q">{facts}</span>
                    {mark === '' ? null : <span className="q mark">{mark}</span>}
                  </button>
                </li>
              ))}
            </ul>
          )}
        </section>
      ))}
    </div>
  );
}
