import { createStore } from 'zustand/vanilla';

/** What the Blocking sheet is about: the action along its clock, or who of it is covered. */
export type BlockingView = 'timeline' | 'coverage';

/** How the Blocking sheet was left, for when one comes back to it. */
export const blockingViewStore = createStore<{ readonly view: BlockingView }>()(() => ({ view: 'timeline' }));
