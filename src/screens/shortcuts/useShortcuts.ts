import { useEffect } from 'react';
import { endNudge, nudge } from './nudge';
import { openShortcutSheet } from './ShortcutSheet';
import { SHORTCUTS } from './shortcuts';

const TYPING = 'input:not([type="range"]):not([type="checkbox"]), textarea, select, [contenteditable="true"]';
/** What has a use of its own for the space bar and the arrows. */
const TAKES_SPACE = 'button, summary, a[href], input, select';
const TAKES_ARROWS = 'input, select, textarea, [role="tab"]';

const isIn = (event: KeyboardEvent, selector: string): boolean =>
  event.target instanceof Element && event.target.closest(selector) !== null;

function onKeyDown(event: KeyboardEvent): void {
  if (event.defaultPrevented) return;
  const typing = isIn(event, TYPING);
  const inDialog = document.querySelector('dialog[open]') !== null;
  const shortcut = SHORTCUTS.find((each) => each.matches(event));
  if (shortcut) {
    if ((typing || inDialog) && !shortcut.always) return;
    if (event.code === 'Space' && isIn(event, TAKES_SPACE)) return;
    event.preventDefault();
    shortcut.act();
    return;
  }
  if (typing || inDialog) return;
  if (event.key === '?') {
    event.preventDefault();
    openShortcutSheet();
    return;
  }
  if (!isIn(event, TAKES_ARROWS) && nudge(event)) event.preventDefault();
}

function onKeyUp(event: KeyboardEvent): void {
  if (event.key.startsWith('Arrow')) endNudge();
}

/** Listens to the keys for as long as the page is there; what leaves the window ends a nudge. */
export function useShortcuts(): void {
  useEffect(() => {
    window.addEventListener('keydown', onKeyDown);
    window.addEventListener('keyup', onKeyUp);
    window.addEventListener('blur', endNudge);
    return () => {
      window.removeEventListener('keydown', onKeyDown);
      window.removeEventListener('keyup', onKeyUp);
      window.removeEventListener('blur', endNudge);
    };
  }, []);
}
