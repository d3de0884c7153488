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

/** Numbers from 0 up to 1, by an additive step and a multiply-xorshift mix on 32 bits: mulberry32, from memory. */
function sharesFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** The draws that follow from a seed. */
export function drawFrom(seed: number): Draw {
  const next = sharesFrom(seed);
  const whole = (low: number, high: number): number => low + Math.floor(next() * (high - low + 1));
  return {
    between: (low, high) => Math.round((low + next() * (high - low)) * 1000) / 1000,
    whole,
    pick: (choices) => choices[whole(0, choices.length - 1)],
    chance: (probability) => next() < probability,
  };
}

/** Evenly between two bounds, not rounded: for a failing case to be run again from its seed alone. */
export function dice(seed: number): (low: number, high: number) => number {
  const next = sharesFrom(seed ^ 0x9e3779b9);
  return (low, high) => low + next() * (high - low);
}
