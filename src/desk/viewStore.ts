import { createStore } from 'zustand/vanilla';

/** Where on the page the pictures go: the screens register their elements, the stage draws into them. */
export interface ViewState {
  /**
   * By setup id, for each setup that is seen: holds the delivered frame and the look-around, the frame takes the middle
   * 1 / LOOK_AROUND of it. A new Map after every change.
   */
  readonly frameElements: ReadonlyMap<string, HTMLElement>;
  readonly walkElement: HTMLElement | null;
  /** By setup id. A new Map after every change. */
  readonly thumbElements: ReadonlyMap<string, HTMLCanvasElement>;
  /** True once the stage has drawn its first picture. */
  readonly pictureReady: boolean;
  /** Why there will be no picture, as a sentence; null while there may be one. */
  readonly pictureRefused: string | null;
  readonly setFrameElement: (setupId: string, element: HTMLElement | null) => void;
  readonly setWalkElement: (element: HTMLElement | null) => void;
  readonly setThumbElement: (setupId: string, element: HTMLCanvasElement | null) => void;
  readonly setPictureReady: () => void;
  readonly setPictureRefused: (sentence: string) => void;
}

/** How much more than the delivered frame the picture area shows, along each axis. */
export const LOOK_AROUND = 1.1;

/** The elements with another one for a setup, or without it. */
function withElement<Kind extends HTMLElement>(
  elements: ReadonlyMap<string, Kind>,
  setupId: string,
  element: Kind | null,
): ReadonlyMap<string, Kind> {
  const next = new Map(elements);
  if (element) next.set(setupId, element);
  else next.delete(setupId);
  return next;
}

export const viewStore = createStore<ViewState>()((set) => ({
  frameElements: new Map(),
  walkElement: null,
  thumbElements: new Map(),
  pictureReady: false,
  pictureRefused: null,
  setFrameElement: (setupId, element) =>
    set(({ frameElements }) => ({ frameElements: withElement(frameElements, setupId, element) })),
  setWalkElement: (walkElement) => set({ walkElement }),
  setThumbElement: (setupId, element) =>
    set(({ thumbElements }) => ({ thumbElements: withElement(thumbElements, setupId, element) })),
  setPictureReady: () => set((state) => (state.pictureReady ? state : { pictureReady: true })),
  setPictureRefused: (pictureRefused) => set({ pictureRefused }),
}));
