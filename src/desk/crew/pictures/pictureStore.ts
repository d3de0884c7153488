import { createStore } from 'zustand/vanilla';

/** The crew's pictures, as far as they are drawn. */
export interface CrewPictures {
  /** Addresses of the drawn stills, by key. A new Map after every change. */
  readonly stills: ReadonlyMap<string, string>;
  /** The still that is being drawn, or null. */
  readonly drawingKey: string | null;
  /** How many stills the page asks for, and how many of these are drawn. */
  readonly asked: number;
  readonly done: number;
  /** Why there are no pictures, as a sentence; null while there may be some. */
  readonly refused: string | null;
  /** Counts the tries: after each something that was refused may go. */
  readonly tries: number;
}

export const pictureStore = createStore<CrewPictures>()(() => ({
  stills: new Map(),
  drawingKey: null,
  asked: 0,
  done: 0,
  refused: null,
  tries: 0,
}));

/** Says why there are no pictures. */
export const refusePictures = (refused: string): void => pictureStore.setState({ refused, drawingKey: null });

/** Takes back what was refused, so that whoever waits for pictures asks again. */
export const tryPicturesAgain = (): void =>
  pictureStore.setState(({ tries }) => ({ refused: null, tries: tries + 1 }));
