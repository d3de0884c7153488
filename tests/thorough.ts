/**
 * How many of so many random cases a test takes: a third, since the tests run often; all where `THOROUGH=1` asks for
 * it. The first ones of a row are always the same.
 */
export const cases = (all: number): number => shareOf(all, 3);

/** The same for cases of which each takes the better part of a second: a tenth. */
export const fewCases = (all: number): number => shareOf(all, 10);

const shareOf = (all: number, parts: number): number =>
  process.env.THOROUGH === '1' ? all : Math.max(1, Math.ceil(all / parts));
