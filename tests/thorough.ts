/**
 * How many of so many random cases a test takes: a third, since the tests run often; all where `THOROUGH=1` asks for
 * it. The first ones of a row are always the same.
 */
export const cases = (all: number): number => shareOf(all, 3);

/** The same for cases of which each takes the better part of a second: a tenth. */
export const fewCases = (all: number): number => shareOf(all, 10);

/** The same for cases of which each takes seconds: a twentieth. */
export const handful = (all: number): number => shareOf(all, 20);

/** How many rays to send across a picture: as many as told where `THOROUGH=1` asks for it, else half as many. */
export const raysAcross = (all: number): number => shareOf(all, 2);

const shareOf = (all: number, parts: number): number =>
  process.env.THOROUGH === '1' ? all : Math.max(1, Math.ceil(all / parts));
