import { expect, test } from 'vitest';
import { tryRemedies } from '../properties/clearance/remedyLaw';
import { SEED } from './fuzzed';

/** How many roofs are tried: few of the runs of all readers, since each asks for some dozens of reports. */
const ROOFS = Math.ceil(Number(process.env.FUZZ_RUNS) / 6000);

test.each(Array.from({ length: ROOFS }, (_, k) => SEED + k))(
  'every remedy, done, does what it says, on a random roof of seed %i',
  (seed) => {
    expect(tryRemedies(seed).breaches).toEqual([]);
  },
);
