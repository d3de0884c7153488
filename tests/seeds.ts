import fc from 'fast-check';

/**
 * The same cases in every run, so that a red test is about the change at hand. `FUZZ_SEED=random` draws new ones,
 * another number repeats a run; fast-check prints the seed with a failure.
 */
const wanted = process.env.FUZZ_SEED;
if (wanted !== 'random') fc.configureGlobal({ seed: Number(wanted ?? 20260311) });
