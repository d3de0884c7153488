import { type KeyboardEvent, type MouseEvent, useCallback, useMemo, useRef, useState } from 'react';
import type { Item } from '../../../core/plan/items';
import type { Setup } from '../../../core/plan/schema/setup';
import { letterOf } from '../../../desk/choose';
import { useLivePlan, useSession } from '../../../desk/hooks';
import { sessionStore } from '../../../desk/sessionStore';
import { worstByItem } from '../../report/summary';
import { useShownReports } from '../../report/useSetupReports';
import { CameraRow } from './CameraRow';
import { ItemRow } from './ItemRow';
import { idsBetween } from './rows';

/** As many rows as come at once; the search finds the others, or they are asked for. */
const ROWS_AT_ONCE = 200;

/** Up and down from row to row; the marks of a row follow by Tab. */
function walkRows(event: KeyboardEvent<HTMLUListElement>): void {
  const steps: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };
  const step = steps[event.key];
  const rows = [...event.currentTarget.querySelectorAll<HTMLElement>('button.thing')];
  const here = document.activeElement;
  const at = here instanceof HTMLElement ? rows.indexOf(here) : -1;
  if (at < 0) return;
  const to =
    step !== undefined
      ? rows[at + step]
      : event.key === 'Home'
        ? rows[0]
        : event.key === 'End'
          ? rows.at(-1)
          : undefined;
  if (step === undefined && !to) return;
  event.preventDefault();
  to?.focus();
}

/** All cameras and things that a search finds. Shift and Ctrl choose several, F2 or a double click renames. */
export function ThingList(props: {
  readonly items: readonly Item[];
  readonly setups: readonly Setup[];
  /** A camera was chosen. */
  readonly onCamera: () => void;
}) {
  const { items, setups } = props;
  const plan = useLivePlan();
  const selectedIds = useSession((state) => state.selectedIds);
  const [most, setMost] = useState(ROWS_AT_ONCE);
  const [renamingId, setRenamingId] = useState<string | null>(null);
  const [focusedId, setFocusedId] = useState<string | null>(null);
  const reports = useShownReports();
  const worst = useMemo(() => worstByItem(reports), [reports]);
  const chosen = useMemo(() => new Set(selectedIds), [selectedIds]);
  const shown = items.slice(0, most);
  const ids = useRef<readonly string[]>([]);
  ids.current = items.map((item) => item.record.id);

  const choose = useCallback((id: string, event: MouseEvent): void => {
    const session = sessionStore.getState();
    if (event.shiftKey) session.setSelectedIds(idsBetween(ids.current, session.selectedId, id));
    else if (event.ctrlKey || event.metaKey) session.toggleSelected(id);
    else session.setSelectedId(id);
  }, []);

  const last = selectedIds.at(-1) ?? null;
  const candidates = [focusedId, last].filter((id) => id !== null);
  const reachableId =
    candidates.find((id) => shown.some((item) => item.record.id === id)) ??
    (setups.length > 0 ? null : (shown[0]?.record.id ?? null));
  return (
    <>
      <ul
        className="rows things"
        aria-label="On the roof"
        onKeyDown={(event) => {
          walkRows(event);
          const id =
            event.target instanceof Element ? event.target.closest<HTMLElement>('li')?.dataset.id : null;
          if (event.key !== 'F2' || id === null || id === undefined) return;
          event.preventDefault();
          setRenamingId(id);
        }}
        onFocus={(event) => setFocusedId(event.target.closest<HTMLElement>('li')?.dataset.id ?? null)}
      >
        {setups.map((setup, place) => (
          <CameraRow
            key={setup.id}
            setup={setup}
            letter={letterOf(plan, setup.id)}
            reachable={reachableId === null && place === 0}
            onChoose={props.onCamera}
          />
        ))}
        {shown.map(({ section, record }) => (
          <ItemRow
            key={record.id}
            section={section}
            record={record}
            kit={plan.kit}
            chosen={chosen.has(record.id)}
            isLast={record.id === last}
            reachable={record.id === reachableId}
            renaming={record.id === renamingId}
            worst={worst.get(record.id)?.worst ?? null}
            onChoose={choose}
            onRename={setRenamingId}
          />
        ))}
      </ul>
      {items.length > most ? (
        <p className="after">
          {items.length - most} more. Type a part of the name to find them, or
          <button type="button" className="link" onClick={() => setMost(most + ROWS_AT_ONCE)}>
            show the next {Math.min(ROWS_AT_ONCE, items.length - most)}
          </button>
        </p>
      ) : null}
    </>
  );
}
