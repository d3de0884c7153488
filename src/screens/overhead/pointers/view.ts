import { distance, type Spot } from '../geometry/spots';
import type { SheetView } from '../useSheetView';
import { spotIn } from './types';

/** The sheet moved under the pane: by one pointer, or by two fingers that zoom it as well. */
export interface ViewUse {
  /** Takes up a pan where a pointer is. */
  readonly take: (at: Spot) => void;
  readonly panTo: (at: Spot) => void;
  readonly pinchTo: (fingers: ReadonlyMap<number, Spot>) => void;
  readonly letGo: () => void;
}

/** Pans and zooms whatever view is the newest. */
export function viewUse(sheet: () => SheetView): ViewUse {
  let last: Spot | null = null;
  let pinch: { readonly middle: Spot; readonly span: number } | null = null;
  return {
    take: (at) => {
      last = at;
      pinch = null;
    },
    panTo: (at) => {
      if (last) sheet().pan([at[0] - last[0], at[1] - last[1]]);
      last = at;
    },
    pinchTo: (fingers) => {
      const before = pinch;
      pinch = pinchOf(fingers);
      if (!pinch || !before) return;
      const { middle, span } = pinch;
      sheet().pan([middle[0] - before.middle[0], middle[1] - before.middle[1]]);
      if (before.span > 0) sheet().zoom(middle, span / before.span);
    },
    letGo: () => {
      last = null;
      pinch = null;
    },
  };
}

function pinchOf(fingers: ReadonlyMap<number, Spot>): { middle: Spot; span: number } | null {
  const [a, b] = fingers.values();
  return a && b ? { middle: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2], span: distance(a, b) } : null;
}

/** Zooms about the pointer. */
export function wheelZoom(sheet: SheetView, svg: Element, event: WheelEvent): void {
  event.preventDefault();
  const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
  // A pinch on a touch pad comes as a wheel with Control and small steps.
  const strength = event.ctrlKey ? 0.01 : 0.0015;
  sheet.zoom(spotIn(svg, event), Math.exp(-event.deltaY * lines * strength));
}
