/**
 * Likelihoods and their log-odds, as tables. All of it is made by +, −, × and ÷ on doubles, which the language defines
 * to the last bit; `Math.exp` and `Math.log` it leaves to the engine, and a link has to mean the same on all of them.
 */

/** Log-odds beyond these are as good as certain. */
export const MOST_ODDS = 11.99;
const SPAN = 12;
const HALF = 2048;

/** e to the x for x in [−12, 12], by the series on a part of it that is squared back up. */
function exponential(x: number): number {
  const part = x / 64;
  let term = 1;
  let sum = 1;
  for (let k = 1; k < 20; k += 1) {
    term = (term * part) / k;
    sum += term;
  }
  for (let doubling = 0; doubling < 6; doubling += 1) sum *= sum;
  return sum;
}

const LIKELY = Float64Array.from({ length: 2 * HALF + 1 }, (_, step) => {
  return 1 / (1 + exponential((-(step - HALF) * SPAN) / HALF));
});

/** The likelihood for log-odds in [−11.99, 11.99]. */
export function likelyOf(odds: number): number {
  const place = (odds / SPAN + 1) * HALF;
  const step = Math.floor(place);
  const part = place - step;
  return LIKELY[step] * (1 - part) + LIKELY[step + 1] * part;
}

const STEPS = 4096;

/** ln of what lies in (0, 1): by Newton's steps on the series above, from a start that halving gives. */
function logarithm(x: number): number {
  let guess = 0;
  for (let power = x; power < 0.5; power *= 2) guess -= Math.LN2;
  for (let step = 0; step < 4; step += 1) {
    const e = exponential(guess);
    guess += (2 * (x - e)) / (x + e);
  }
  return guess;
}

const ODDS = Float64Array.from({ length: STEPS }, (_, step) => {
  const likely = (step + 0.5) / STEPS;
  return logarithm(likely) - logarithm(1 - likely);
});

/** The log-odds of a likelihood from 0 up to 1, to a 4,096th. */
export const oddsOf = (likely: number): number => ODDS[Math.floor(likely * STEPS)];
