import { type KeyboardEvent, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { nameOfArea } from '../../core/plan/wetness';
import { type ContextRequest, contextStore } from '../../desk/contextStore';
import { useLivePlan, useSession } from '../../desk/hooks';
import { nameInText } from '../overhead/words';
import { calledOf } from './doing';
import { actionOf, actionsFor } from './registry';
import { type Action, type ActionContext, wordOf } from './types';
import { areaMeant } from './wetActions';
import './actions.css';

/** Space between the menu and the edge of the window, pixels. */
const OFF_EDGE = 8;

/** The menu of what can be done to what was pressed, where it was pressed. */
export function ContextMenu() {
  const open = useStore(contextStore, (state) => state.open);
  return open && <OpenMenu key={`${open.clientX} ${open.clientY} ${open.ids.join(' ')}`} request={open} />;
}

function OpenMenu({ request }: { readonly request: ContextRequest }) {
  const plan = useLivePlan();
  const setupId = useSession((state) => state.setupId);
  const context = useMemo(
    (): ActionContext => ({ plan, ids: request.ids, setupId, at: request.spot }),
    [plan, request, setupId],
  );
  const [page, setPage] = useState<string | null>(null);
  useEffect(() => setPage(request.page ?? null), [request]);
  const opened = page === null ? null : actionOf(page);
  const actions = opened?.more?.(context) ?? actionsFor(context);
  const menu = useRef<HTMLDivElement>(null);
  useFocusKept(menu);
  const place = usePlace(menu, request);

  const close = (): void => contextStore.getState().closeContext();
  const run = (action: Action): void => {
    if (action.more) {
      setPage(action.id);
      return;
    }
    close();
    action.act(context);
  };
  useEffect(() => {
    menu.current?.querySelector<HTMLElement>('[role="menuitem"]')?.focus();
  });
  const area = areaMeant(context);
  const title =
    opened !== null
      ? wordOf(opened, context)
      : request.ids.length > 0
        ? calledOf(plan, request.ids)
        : area
          ? nameInText(nameOfArea(plan.ground, area.id))
          : 'the roof';

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const back = event.key === 'Escape' || event.key === 'ArrowLeft';
    if (back && page !== null) setPage(null);
    else if (event.key === 'Escape' || event.key === 'Tab') close();
    else if (event.key === 'ArrowRight') {
      const at = focusedAmong(rovingItems(menu.current));
      const action = actions[at];
      if (action?.more) run(action);
    } else {
      const meant = actions.find((action) => action.matches?.(event.nativeEvent));
      if (meant) run(meant);
      else if (!rove(menu.current, event.key)) {
        // Enter and the space bar press the word; nothing goes on to the page.
        event.stopPropagation();
        return;
      }
    }
    event.preventDefault();
    event.stopPropagation();
  };
  return (
    <div
      ref={menu}
      className="context-menu"
      role="menu"
      aria-label={`What to do with ${title}`}
      style={place}
      onKeyDown={onKeyDown}
      onContextMenu={(event) => event.preventDefault()}
    >
      <p className="of">{title}</p>
      {actions.map((action, index) => (
        <button
          key={action.id}
          type="button"
          role="menuitem"
          tabIndex={-1}
          aria-haspopup={action.more ? 'menu' : undefined}
          className={index > 0 && actions[index - 1]?.group !== action.group ? 'first-of-group' : undefined}
          onClick={() => run(action)}
        >
          <span>{wordOf(action, context)}</span>
          {action.more ? <span className="further" aria-hidden="true" /> : <kbd>{action.keys?.[0]}</kbd>}
        </button>
      ))}
      {actions.length === 0 && <p className="after">Nothing can be done here.</p>}
    </div>
  );
}

/** Puts the focus back where it was when the menu goes. A press beside the menu closes it. */
function useFocusKept(menu: { readonly current: HTMLElement | null }): void {
  useEffect(() => {
    const before = document.activeElement;
    const onPress = (event: PointerEvent): void => {
      if (event.target instanceof Node && !menu.current?.contains(event.target))
        contextStore.getState().closeContext();
    };
    window.addEventListener('pointerdown', onPress, true);
    return () => {
      window.removeEventListener('pointerdown', onPress, true);
      const isElsewhere = document.activeElement !== null && document.activeElement !== document.body;
      if (isElsewhere) return;
      if (before instanceof HTMLElement || before instanceof SVGElement)
        before.focus({ preventScroll: true });
    };
  }, [menu]);
}

/** Where the menu goes: at what was pressed, within the window, whatever page it shows. */
function usePlace(
  menu: { readonly current: HTMLElement | null },
  { clientX, clientY }: ContextRequest,
): { readonly left: number; readonly top: number } {
  const [place, setPlace] = useState({ left: clientX, top: clientY });
  useLayoutEffect(() => {
    const size = menu.current?.getBoundingClientRect();
    if (!size) return;
    const [right, bottom] = [
      window.innerWidth - size.width - OFF_EDGE,
      window.innerHeight - size.height - OFF_EDGE,
    ];
    const left = Math.max(OFF_EDGE, Math.min(clientX, right));
    const top = Math.max(OFF_EDGE, Math.min(clientY, bottom));
    setPlace((before) => (before.left === left && before.top === top ? before : { left, top }));
  });
  return place;
}

const rovingItems = (menu: HTMLElement | null): readonly HTMLElement[] => [
  ...(menu?.querySelectorAll<HTMLElement>('[role="menuitem"]') ?? []),
];

const focusedAmong = (items: readonly HTMLElement[]): number => {
  const focused = document.activeElement;
  return focused instanceof HTMLElement ? items.indexOf(focused) : -1;
};

/** Moves the focus by the arrows, to the ends, or to the next word that begins with a letter. Says whether it did. */
function rove(menu: HTMLElement | null, key: string): boolean {
  const items = rovingItems(menu);
  const now = focusedAmong(items);
  const go = (to: number): boolean => {
    items[(to + items.length) % items.length]?.focus();
    return true;
  };
  if (key === 'ArrowDown') return go(now + 1);
  if (key === 'ArrowUp') return go(now < 0 ? -1 : now - 1);
  if (key === 'Home') return go(0);
  if (key === 'End') return go(-1);
  if (!/^\p{L}$/u.test(key)) return false;
  const after = [...items.slice(now + 1), ...items.slice(0, now + 1)];
  const found = after.find((each) => each.textContent?.toLowerCase().startsWith(key.toLowerCase()));
  found?.focus();
  return found !== undefined;
}
