/** The first day that a zip knows, by whatever clock, so that the bytes are always the same. */
export const NO_DAY = new Date(1980, 0, 1);
