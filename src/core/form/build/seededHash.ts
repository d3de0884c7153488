/**
 * Chance without a generator: the same whole numbers always give the same share, so that a plan looks alike on
 * every machine and on every day. The mixing step is the finaliser of MurmurHash3 (public domain).
 */
export function hashOf(...numbers: readonly number[]): number {
  let state = 0x9e3779b9;
  for (const number of numbers) {
    state = Math.imul(state ^ (number | 0), 0x85ebca6b);
    state = Math.imul(state ^ (state >>> 13), 0xc2b2ae35);
    state ^= state >>> 16;
  }
  return state >>> 0;
}

/** A number from 0 up to, but never, 1. */
export const shareOf = (...numbers: readonly number[]): number => hashOf(...numbers) / 4294967296;

/** A whole number from a text, such as an id. */
export const hashOfText = (text: string): number => hashOf(...Array.from(text, (sign) => sign.charCodeAt(0)));
