import { createStore } from 'zustand/vanilla';

/** Where on the page the pictures go: the screens register their elements, the stage draws into them. */
export interface ViewState {
  /** Holds the delivered frame and the look-around: the frame takes the middle 1 / LOOK_AROUND of it. */
  readonly frameElement: HTMLElement | null;
  readonly walkElement: HTMLElement | null;
  /** By setup id. A new Map after every change. */
  readonly thumbElements: ReadonlyMap<string, HTMLCanvasElement>;
  /** True once the stage has drawn its first picture. */
  readonly pictureReady: boolean;
  /** Why there will be no picture, as a sentence; null while there may be one. */
  readonly pictureRefused: string | null;
  readonly setFrameElement: (element: HTMLElement | null) => void;
  readonly setWalkElement: (element: HTMLElement | null) => void;
  readonly setThumbElement: (setupId: string, element: HTMLCanvasElement | null) => void;
  readonly setPictureReady: () => void;
  readonly setPictureRefused: (sentence: string) => void;
}

/** How much more than the delivered frame the picture area shows, along each axis. */
export const LOOK_AROUND = 1.1;

export const viewStore = createStore<ViewState>()((set) => ({
  frameElement: null,
  walkElement: null,
  thumbElements: new Map(),
  pictureReady: false,
  pictureRefused: null,
  setFrameElement: (frameElement) => set({ frameElement }),
  setWalkElement: (walkElement) => set({ walkElement }),
  setThumbElement: (setupId, element) =>
    set((state) => {
      const thumbElements = new Map(state.thumbElements);
      if (element) thumbElements.set(setupId, element);
      else thumbElements.delete(setupId);
      return { thumbElements };
    }),
  setPictureReady: () => set((state) => (state.pictureReady ? state : { pictureReady: true })),
  setPictureRefused: (pictureRefused) => set({ pictureRefused }),
}));
