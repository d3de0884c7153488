/** Numbers that look random and follow from a seed alone, the same on every machine. */
export interface Draw {
  /** Evenly between two bounds, rounded to a thousandth. */
  between(low: number, high: number): number;
  /** A whole number, both bounds included. */
  whole(low: number, high: number): number;
  pick<Choice>(choices: readonly Choice[]): Choice;
  /** True with this probability. */
  chance(probability: number): boolean;
}

/** A 32-bit generator with an additive step and a multiply-xorshift mix: mulberry32, from memory. */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    between: (low, high) => Math.round((low + next() * (high - low)) * 1000) / 1000,
    whole,
    pick: (choices) => choices[whole(0, choices.length - 1)],
    chance: (probability) => next() < probability,
  };
}
