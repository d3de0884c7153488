/** Counts the ways in which stills have been drawn: what is kept from before another one is not shown. */
const DRAWN_AS = 1;

/** What a still is known by: the link, the setup and the instant of the action's clock, seconds. */
export const stillKey = (fragment: string, setupId: string, seconds: number): string =>
  [DRAWN_AS, setupId, seconds, fragment].join(' ');
