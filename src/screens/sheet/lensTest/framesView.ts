import { createStore } from 'zustand/vanilla';

/** What the Frames sheet is about. */
export type FramesView = 'findings' | 'lens test' | 'contact sheet' | 'clear all';

/** How the Frames sheet was left, for when one comes back to it. */
export const framesViewStore = createStore<{ readonly view: FramesView }>()(() => ({ view: 'findings' }));
