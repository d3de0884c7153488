import { useEffect } from 'react';
import type { Spot } from '../../../core/plan/schema/numbers';
import { isTurnedOff } from '../../../desk/singleKeys';
import { moveCrosshair } from '../../../desk/tools/crosshair';
import { endStroke, press, stepBack, takeBackCorner } from '../../../desk/tools/drawing';
import { isPicked, toolStore } from '../../../desk/tools/toolStore';
import { beginEntry } from '../../../desk/tools/typing';
import { ARROWS } from '../geometry/arrows';

/** What takes typed keys for itself. */
const TYPING = 'input:not([type="range"]):not([type="checkbox"]), textarea, select, [contenteditable="true"]';
/** What has a use of its own for the arrows and Enter. */
const OWN_KEYS = 'button, summary, a[href], [role="tab"], [role="toolbar"], [role="menu"], dialog';

/** What begins a number: a digit, or a decimal mark. */
const BEGINS_NUMBER = /^[\d.,]$/;

/**
 * A key for the tool that is in the hand; says whether it was one. `start` is where the crosshair first
 * appears; without `arrows` those are left to the view.
 */
export function toolKey(event: KeyboardEvent, start: () => Spot, arrows: boolean): boolean {
  const withCommand = event.ctrlKey || event.metaKey;
  const arrow = withCommand || !arrows ? undefined : ARROWS[event.key];
  if (arrow) {
    moveCrosshair(arrow[0], arrow[1], { coarse: event.shiftKey, fine: event.altKey, start: start() });
    return true;
  }
  if (event.key === 'Enter') {
    if (arrows && !toolStore.getState().stroke?.next && !withCommand) {
      moveCrosshair(0, 0, { coarse: false, fine: false, start: start() });
    } else pressOrEnd(withCommand);
    return true;
  }
  if (withCommand || event.altKey) return false;
  if (event.key === 'Backspace') takeBackCorner();
  else if (event.key === 'e' || event.key === 'E') endStroke();
  else if (event.key === 'c' || event.key === 'C') endStroke(true);
  else if (BEGINS_NUMBER.test(event.key)) beginEntry(event.key);
  else return false;
  return true;
}

/** Enter presses for whoever points by keys; after a pointer, which presses by itself, it ends what is drawn. */
function pressOrEnd(ends: boolean): void {
  const { stroke } = toolStore.getState();
  if (ends || (stroke && !stroke.byKeys && stroke.corners.length > 0)) endStroke();
  else press();
}

/**
 * Listens to the keys for as long as a tool is in the hand. They count wherever nothing else has the focus that has a
 * use for them; Escape counts everywhere.
 */
export function useToolKeys(board: () => Element | null, start: () => Spot, arrows = true): void {
  useEffect(() => {
    const onKey = (event: KeyboardEvent): void => {
      if (!isPicked() || event.defaultPrevented) return;
      const target = event.target instanceof Element ? event.target : null;
      if (document.querySelector('dialog[open], [role="menu"]')) return;
      const own = target?.closest('.stroke-entry') ?? null;
      if (own) return;
      const onBoard = (target && board()?.contains(target)) ?? false;
      if (event.key === 'Escape') {
        if (target?.closest(TYPING)) return;
        stepBack();
      } else {
        if (target?.closest(TYPING) || (!onBoard && target?.closest(OWN_KEYS))) return;
        if (onBoard && target?.closest('button')) return;
        if (!onBoard && isTurnedOff(event)) return;
        if (!toolKey(event, start, arrows)) return;
      }
      event.stopPropagation();
      event.preventDefault();
    };
    // On the way down: the drawing and the page have uses of their own for these keys.
    window.addEventListener('keydown', onKey, true);
    return () => window.removeEventListener('keydown', onKey, true);
  }, [board, start, arrows]);
}
