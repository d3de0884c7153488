import { createStore } from 'zustand/vanilla';

/** What may be left out of the crew's overhead. */
export const ROOF_LAYERS = ['stands', 'cables', 'marks', 'cameras', 'throws'] as const;
export type RoofLayer = (typeof ROOF_LAYERS)[number];

/** How the roof lies in its pane once somebody has moved it: the place in the middle, metres, and pixels to the metre. */
export interface RoofView {
  readonly middle: readonly [number, number];
  readonly perMetre: number;
}

/** How somebody looks at the crew's overhead; it stays so while they are on another tab. */
interface OverheadState {
  readonly hidden: ReadonlySet<RoofLayer>;
  /** Whose frame is drawn; null for none. */
  readonly setupId: string | null;
  /** The thing that is tapped: an item, or the setup whose camera it is. */
  readonly chosenId: string | null;
  /** Null while the whole roof is fitted. */
  readonly view: RoofView | null;
  /** Whether the roof is turned by a quarter; null while the pane decides. */
  readonly turned: boolean | null;
}

export const NOT_MOVED: OverheadState = {
  hidden: new Set(),
  setupId: null,
  chosenId: null,
  view: null,
  turned: null,
};

export const overheadStore = createStore<OverheadState>()(() => NOT_MOVED);

/** Shows a layer, or leaves it out. */
export function toggleLayer(layer: RoofLayer): void {
  const hidden = new Set(overheadStore.getState().hidden);
  if (!hidden.delete(layer)) hidden.add(layer);
  overheadStore.setState({ hidden });
}

/** Has the roof lie the other way round in its pane, fitted. */
export const turnRoof = (turned: boolean): void => overheadStore.setState({ turned, view: null });
