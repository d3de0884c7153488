/** A drawing cannot hold a button element: its groups are given the role and a place in the order of focus. */
export const AS_BUTTON = { role: 'button', tabIndex: 0 } as const;
