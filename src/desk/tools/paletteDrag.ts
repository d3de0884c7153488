import { paletteEntryOf } from '../../core/kit/palette/makeItem';
import { dropStroke, pickTool, pointAt, press, putDown } from './drawing';
import { roofSurfaceAt } from './roofSurfaces';
import { isPicked, toolStore } from './toolStore';

/** Less than this is a press on the palette, not a drag out of it; pixels. */
const SLACK = 6;

/** A finger that moves sooner than this scrolls the palette, milliseconds. */
const REST_MS = 220;
/** How far above a finger the thing hangs, so that it is seen; pixels. */
export const ABOVE_FINGER = 56;

/** What of a pointer's press is needed. */
export interface PalettePress {
  readonly pointerId: number;
  readonly pointerType: string;
  readonly timeStamp: number;
  readonly clientX: number;
  readonly clientY: number;
  readonly currentTarget: EventTarget | null;
}

/**
 * Drags something out of the palette by mouse, finger or pen: it shows on the roof under the pointer and is put where
 * it is let go; Escape, or letting go elsewhere, drops it. What is drawn by corners is picked and gets its first one
 * there. A press that does not move is left to the palette's own button.
 */
export function beginPaletteDrag(entryId: string, event: PalettePress): void {
  const entry = paletteEntryOf(entryId);
  const button = event.currentTarget;
  if (!entry || !(button instanceof Element)) return;
  const tool =
    entry.how === 'spot' ? ({ type: 'put', entryId } as const) : ({ type: 'draw', entryId } as const);
  const { pointerId } = event;
  const isTouch = event.pointerType === 'touch';
  let dragging = false;

  const point = ({ clientX, clientY, altKey }: PointerEvent): boolean => {
    const y = clientY - (isTouch ? ABOVE_FINGER : 0);
    const surface = roofSurfaceAt(clientX, y);
    const spot = surface?.roofSpotAt(clientX, y) ?? null;
    const reachMetres = surface?.reachMetres(clientX, y) ?? 0;
    pointAt(spot, { reachMetres, free: altKey, straight: false });
    return spot !== null;
  };
  const onMove = (move: PointerEvent): void => {
    if (move.pointerId !== pointerId) return;
    if (!dragging) {
      if (Math.hypot(move.clientX - event.clientX, move.clientY - event.clientY) < SLACK) return;
      if (isTouch && move.timeStamp - event.timeStamp < REST_MS) {
        end();
        return;
      }
      dragging = true;
      button.setPointerCapture(pointerId);
      pickTool(tool);
    }
    move.preventDefault();
    point(move);
  };
  const end = (): void => {
    window.removeEventListener('pointermove', onMove);
    window.removeEventListener('pointerup', onUp);
    window.removeEventListener('pointercancel', onCancel);
    window.removeEventListener('keydown', onKey, true);
    window.removeEventListener('touchmove', hold);
    if (dragging) window.addEventListener('click', swallow, { capture: true, once: true });
    // A drag that ends elsewhere brings no click.
    setTimeout(() => window.removeEventListener('click', swallow, true));
  };
  const onUp = (up: PointerEvent): void => {
    if (up.pointerId !== pointerId) return;
    end();
    if (!dragging || !isPicked()) return;
    if (point(up)) press();
    else dropStroke();
    // What goes down in one place is done with; corners go on.
    const isElsewhere = toolStore.getState().stroke === null;
    if (entry.how === 'spot' || isElsewhere) putDown();
  };
  const drop = (): void => {
    end();
    if (!dragging) return;
    dropStroke();
    putDown();
  };
  const onCancel = (cancel: PointerEvent): void => {
    if (cancel.pointerId === pointerId) drop();
  };
  const onKey = (key: KeyboardEvent): void => {
    if (key.key !== 'Escape') return;
    key.stopPropagation();
    key.preventDefault();
    drop();
  };
  const hold = (touch: TouchEvent): void => {
    if (dragging) touch.preventDefault();
  };
  window.addEventListener('pointermove', onMove);
  window.addEventListener('pointerup', onUp);
  window.addEventListener('pointercancel', onCancel);
  window.addEventListener('keydown', onKey, true);
  // Without this the sheet under the finger would scroll away instead.
  window.addEventListener('touchmove', hold, { passive: false });
}

const swallow = (click: MouseEvent): void => {
  click.stopPropagation();
  click.preventDefault();
};
