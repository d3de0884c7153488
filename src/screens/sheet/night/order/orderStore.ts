import { createStore } from 'zustand/vanilla';

/** What the fields beside the order are about. */
export const ORDER_FIELDS = ['night', 'setup', 'cast', 'changes'] as const;
type OrderFields = (typeof ORDER_FIELDS)[number];

/** How the order was left, for when one comes back to it. */
export const orderStore = createStore<{ readonly fields: OrderFields }>()(() => ({ fields: 'night' }));
