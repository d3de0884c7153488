import { useCallback, useEffect, useMemo, useState } from 'react';
import { offerFit } from './fitting';
import {
  fittedView,
  type Margins,
  type Pane,
  pannedBy,
  pixelsPerMetre,
  scaleOf,
  toPane,
  toRoof,
  type View,
  zoomedAbout,
} from './geometry/sheet';
import type { Bounds, Spot } from './geometry/spots';

export interface SheetView {
  readonly view: View;
  readonly pane: Pane;
  readonly scale: number;
  readonly perMetre: number;
  /** Whether it shows the whole deck as it fits. */
  readonly fitted: boolean;
  readonly at: (spot: Spot) => Spot;
  readonly roofAt: (pixels: Spot) => Spot;
  readonly zoom: (pointer: Spot, factor: number) => void;
  readonly pan: (by: Spot) => void;
  readonly fitAll: () => void;
}

/** How the sheet lies in its pane: fitted until somebody zooms or pans, and again after `fitAll`. */
export function useSheetView(bounds: Bounds, pane: Pane, margins: Margins): SheetView {
  const [own, setOwn] = useState<View | null>(null);
  const [left, top, right, bottom] = bounds;
  const fitted = useMemo(
    () => fittedView([left, top, right, bottom], pane, margins),
    [left, top, right, bottom, pane, margins],
  );
  const view = own ?? fitted;
  const zoom = useCallback(
    (pointer: Spot, factor: number) =>
      setOwn((before) => zoomedAbout(before ?? fitted, pane, pointer, factor)),
    [fitted, pane],
  );
  const pan = useCallback((by: Spot) => setOwn((before) => pannedBy(before ?? fitted, by)), [fitted]);
  const fitAll = useCallback(() => setOwn(null), []);
  useEffect(() => offerFit(fitAll), [fitAll]);
  return useMemo(() => {
    const scale = scaleOf(view);
    return {
      view,
      pane,
      scale,
      perMetre: pixelsPerMetre(scale),
      fitted: own === null,
      at: (spot: Spot) => toPane(view, pane, spot),
      roofAt: (pixels: Spot) => toRoof(view, pane, pixels),
      zoom,
      pan,
      fitAll,
    };
  }, [view, pane, own, zoom, pan, fitAll]);
}
