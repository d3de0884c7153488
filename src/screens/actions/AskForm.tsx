import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { MOST_IN_A_ROW } from '../../core/plan/edits/arrayItems';
import { labelItems } from '../../core/plan/edits/labelItems';
import { renameItem } from '../../core/plan/edits/renameItem';
import { itemOf } from '../../core/plan/items';
import { usePlanState } from '../../desk/hooks';
import { Field, SelectField } from '../parts/Field';
import { LengthField } from '../parts/LengthField';
import { askStore, type RowAsked } from './askStore';
import { calledOf, change } from './doing';
import { dropAsked, layRow, runsFor, showRow } from './rows';
import './actions.css';

/** The small form that an action asks something on, over the foot of the roof. */
export function AskForm() {
  const asked = useStore(askStore, (state) => state.asked);
  if (!asked) return null;
  const key = asked.ids.join(' ');
  return asked.type === 'name' ? <NameForm key={key} ids={asked.ids} /> : <RowForm key={key} row={asked} />;
}

interface ShellProps {
  readonly title: string;
  readonly word: string;
  readonly done: () => void;
  readonly children: ReactNode;
}

/** A form that takes the focus, is left by Escape, and gives the focus back. */
function Shell({ title, word, done, children }: ShellProps) {
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    form.current?.querySelector<HTMLElement>('input, select')?.focus();
    return () => {
      if (before instanceof HTMLElement || before instanceof SVGElement)
        before.focus({ preventScroll: true });
    };
  }, []);
  return (
    <form
      ref={form}
      className="ask-form"
      aria-label={title}
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
      onKeyDown={(event) => {
        if (event.key !== 'Escape') return;
        event.stopPropagation();
        event.preventDefault();
        dropAsked();
      }}
    >
      <h3>{title}</h3>
      {children}
      <p className="acts">
        <button type="submit">{word}</button>
        <button type="button" className="bare" onClick={dropAsked}>
          Leave it
        </button>
      </p>
    </form>
  );
}

function NameForm({ ids }: { readonly ids: readonly string[] }) {
  const plan = usePlanState((state) => state.plan);
  const [first] = ids;
  const [name, setName] = useState(() =>
    first === undefined ? '' : (itemOf(plan, first)?.record.label ?? ''),
  );
  const done = (): void => {
    const label = name.trim();
    dropAsked();
    if (label === '' || first === undefined) return;
    change(`rename ${calledOf(plan, ids)}`, (before) =>
      ids.length > 1 ? labelItems(before, { ids, stem: label }) : renameItem(before, { id: first, label }),
    );
  };
  const title =
    ids.length > 1 ? `A name for ${ids.length} things, numbered` : `A name for ${calledOf(plan, ids)}`;
  return (
    <Shell title={title} word="Call it that" done={done}>
      <div className="field">
        <label htmlFor="ask-name">name</label>
        <span className="value">
          <input
            id="ask-name"
            type="text"
            autoComplete="off"
            maxLength={80}
            value={name}
            onFocus={(event) => event.currentTarget.select()}
            onChange={(event) => setName(event.currentTarget.value)}
          />
        </span>
      </div>
    </Shell>
  );
}

const COUNT = `a whole number from 2 to ${MOST_IN_A_ROW}`;

function RowForm({ row }: { readonly row: RowAsked }) {
  const plan = usePlanState((state) => state.plan);
  const change = (part: Partial<RowAsked>): null => {
    showRow({ ...row, ...part });
    return null;
  };
  const isStraight = row.runId === null;
  return (
    <Shell
      title={`A row, beginning with ${calledOf(plan, row.ids)}`}
      word="Lay the row"
      done={() => layRow(row)}
    >
      <div className="fields">
        <Field
          label="how many"
          text={String(row.count)}
          commit={(text) => {
            const count = Number(text.trim());
            if (!Number.isInteger(count) || count < 2 || count > MOST_IN_A_ROW) return `How many: ${COUNT}.`;
            return change({ count });
          }}
        />
        {row.spacingMetres !== null && (
          <LengthField
            label="apart"
            metres={row.spacingMetres}
            commit={(metres) =>
              metres < 0.01 || metres > 500 ? 'Apart: 0.01 m to 500 m.' : change({ spacingMetres: metres })
            }
          />
        )}
        {isStraight && (
          <Field
            label="bearing"
            text={String(Math.round(row.bearingDegrees * 10) / 10)}
            unit="°"
            commit={(text) => {
              const degrees = Number(text.replace('°', '').replace(',', '.').trim());
              return Number.isFinite(degrees) && text.trim() !== ''
                ? change({ bearingDegrees: ((degrees % 360) + 360) % 360 })
                : 'Bearing: degrees, 0 to 360.';
            }}
          />
        )}
        <SelectField
          label="along"
          value={row.runId ?? ''}
          onChange={(value) =>
            change({
              runId: value === '' ? null : value,
              spacingMetres: value === '' ? (row.spacingMetres ?? 1) : null,
            })
          }
        >
          <option value="">a straight line</option>
          {runsFor(plan, row.ids).map(({ record }) => (
            <option key={record.id} value={record.id}>
              {record.label}
            </option>
          ))}
        </SelectField>
      </div>
      {!isStraight && (
        <label className="check">
          <input
            type="checkbox"
            checked={row.spacingMetres === null}
            onChange={(event) => change({ spacingMetres: event.currentTarget.checked ? null : 1 })}
          />
          evenly over the whole of it
        </label>
      )}
      <label className="check">
        <input
          type="checkbox"
          checked={row.follow}
          onChange={(event) => change({ follow: event.currentTarget.checked })}
        />
        turned with the line
      </label>
    </Shell>
  );
}
