import { expect, test } from 'vitest';
import { tryRemedies } from '../properties/clearance/remedyLaw';

/** How many roofs are tried: a twentieth of the runs of a reader, since each asks for some dozens of reports. */
const RUNS = Math.ceil(Number(process.env.FUZZ_RUNS ?? 300) / 20);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;

test.each(Array.from({ length: RUNS }, (_, k) => SEED + k))(
  'every remedy, done, does what it says, on a random roof of seed %i',
  (seed) => {
    expect(tryRemedies(seed).breaches).toEqual([]);
  },
);
