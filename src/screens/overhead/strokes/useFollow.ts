import { useEffect, useRef } from 'react';
import type { Stroke } from '../../../desk/tools/toolStore';
import type { SheetView } from '../useSheetView';

/** How far inside the pane what is typed or pointed at by keys stays, pixels. */
const INSIDE = 48;

/** How far to pan so that a place along one axis comes inside, pixels. */
const into = (at: number, size: number): number =>
  at < INSIDE ? INSIDE - at : at > size - INSIDE ? size - INSIDE - at : 0;

/**
 * Pans the sheet after the keys' crosshair and after corners that were typed beyond the pane. A sheet that was fitted
 * before is fitted again once the stroke has ended.
 */
export function useFollow(stroke: Stroke, sheet: SheetView): void {
  const followed = useRef(false);
  const corner = stroke.corners.at(-1) ?? null;
  const spot = (stroke.byKeys ? stroke.next : null) ?? corner;
  const [x, z] = spot ?? [null, null];
  const drawing = corner !== null;
  const latest = useRef(sheet);
  latest.current = sheet;
  useEffect(() => {
    const { at, pane, pan, fitted } = latest.current;
    if (x === null || z === null) return;
    const [left, top] = at([x, z]);
    const by = [into(left, pane.width), into(top, pane.height)] as const;
    if (by[0] === 0 && by[1] === 0) return;
    followed.current ||= fitted;
    pan(by);
  }, [x, z]);
  useEffect(() => {
    if (drawing || !followed.current) return;
    followed.current = false;
    latest.current.fitAll();
  }, [drawing]);
}
