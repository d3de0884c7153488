/** Where the kept links lie. */
export const LINKS = 'links';
export const MOST_LINKS = 20;
