import { createStore } from 'zustand/vanilla';

/** What the Night sheet is about. */
export const NIGHT_VIEWS = ['order', 'power', 'packing', 'sky', 'cautions'] as const;
export type NightView = (typeof NIGHT_VIEWS)[number];

/** How the Night sheet was left, for when one comes back to it. */
export const nightViewStore = createStore<{ readonly view: NightView }>()(() => ({ view: 'order' }));
