import { useEffect } from 'react';
import { contextStore } from '../../desk/contextStore';
import { sessionStore } from '../../desk/sessionStore';
import { isTurnedOff } from '../../desk/singleKeys';
import { isPicked } from '../../desk/tools/toolStore';
import { copyOut, cutOut, paste } from '../actions/clipboard';
import { menuPlace } from '../actions/pages';
import { ACTIONS, contextNow } from '../actions/registry';
import { endNudge, nudge } from './nudge';
import { openShortcutSheet } from './ShortcutSheet';

const TYPING = 'input:not([type="range"]):not([type="checkbox"]), textarea, select, [contenteditable="true"]';
/** What has a use of its own for the space bar and the arrows. */
const TAKES_SPACE = 'button, summary, a[href], input, select';
const TAKES_ARROWS = 'input, select, textarea, [role="tab"]';

const isIn = (event: Event, selector: string): boolean =>
  event.target instanceof Element && event.target.closest(selector) !== null;
const inDialog = (): boolean => document.querySelector('dialog[open]') !== null;

/** The menu key, and Shift F10 where there is none: the menu for what is chosen, over what has the focus. */
function openMenu(event: KeyboardEvent): boolean {
  if (event.key !== 'ContextMenu' && !(event.key === 'F10' && event.shiftKey)) return false;
  const { selectedIds } = sessionStore.getState();
  const own = event.target instanceof Element ? event.target.closest('[data-target]') : null;
  const id = own?.getAttribute('data-target');
  const isOther = id && !id.includes(':') && !selectedIds.includes(id);
  if (isOther) sessionStore.getState().setSelectedId(id);
  const ids = sessionStore.getState().selectedIds;
  contextStore.getState().openContext({ ids, spot: null, ...menuPlace() });
  return true;
}

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented || isTurnedOff(event)) return;
  const typing = isIn(event, TYPING);
  const context = contextNow();
  const action = ACTIONS.find((each) => each.matches?.(event) && each.can(context));
  if (action) {
    if ((typing || inDialog()) && !action.always) return;
    if (event.code === 'Space' && isIn(event, TAKES_SPACE)) return;
    event.preventDefault();
    action.act(context);
    return;
  }
  if (typing || inDialog()) return;
  if (event.key === '?') openShortcutSheet();
  else if (!openMenu(event) && (isPicked() || isIn(event, TAKES_ARROWS) || !nudge(event))) return;
  event.preventDefault();
}

function onKeyUp(event: KeyboardEvent): void {
  if (event.key.startsWith('Arrow')) endNudge();
}

/** Copy and cut are the page's own while things are chosen and no words are marked. */
function onCopy(event: ClipboardEvent): void {
  const { selectedIds } = sessionStore.getState();
  const marked = document.getSelection()?.isCollapsed === false;
  if (selectedIds.length === 0 || isIn(event, TYPING) || inDialog() || marked) return;
  const text = event.type === 'cut' ? cutOut(selectedIds) : copyOut(selectedIds);
  if (text === null) return;
  event.clipboardData?.setData('text/plain', text);
  event.preventDefault();
}

/** Only what was copied as a plan is ours to paste; without a system's clipboard, what this page holds. */
function onPaste(event: ClipboardEvent): void {
  if (isIn(event, TYPING) || inDialog()) return;
  const text = event.clipboardData?.getData('text/plain').trim() ?? '';
  event.preventDefault();
  paste(null, text === '' ? null : text);
}

/** Listens to the keys for as long as the page is there; what leaves the window ends a nudge. */
export function useShortcuts(): void {
  useEffect(() => {
    const listening = [
      ['keydown', onKeyDown],
      ['keyup', onKeyUp],
      ['blur', endNudge],
      ['copy', onCopy],
      ['cut', onCopy],
      ['paste', onPaste],
    ] as const;
    const each = (act: 'addEventListener' | 'removeEventListener'): void => {
      for (const [type, listener] of listening) window[act](type, listener as EventListener);
    };
    each('addEventListener');
    return () => each('removeEventListener');
  }, []);
}
