import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { candelaTable } from '../../src/core/form/photometry/candelaTable';
import { HEADS } from '../../src/core/kit/heads';
import { lightFaults } from '../../src/core/plan/lightChecks';
import { distribution } from '../../src/core/plan/schema/distribution';
import { readLm63 } from '../../src/exchange/lm63/readLm63';
import { AXIAL_LM63, lm63Of, steps } from '../outside/exchange/lm63/axial';
import { brokenNumbers } from '../plans/brokenNumbers';

/** How many files each test makes, and the seed that makes the same ones again: others each time, unless it is given. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;
const LONGEST_MS = 200;

/** One sentence, or a table that a plan takes and whose numbers are numbers; before long either way. */
function holds(text: string): boolean {
  const begun = performance.now();
  const read = readLm63(text, 'lamp.ies');
  expect(performance.now() - begun).toBeLessThan(LONGEST_MS);
  if (!read.ok) {
    expect(read.faults[0].sentence).toMatch(/^(Line \d+|The file): found .+, expected .+\.$/);
    expect(read.faults[0].sentence).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
    return false;
  }
  const { distribution: table } = read.value;
  expect(v.safeParse(distribution, table).success).toBe(true);
  expect(lightFaults([{ ...HEADS[0], distribution: table }])).toEqual([]);
  const { lumens, peakCandela, beamDegrees, fieldDegrees, candelaAt } = candelaTable(table);
  expect(brokenNumbers({ lumens, peakCandela, beamDegrees, fieldDegrees })).toEqual([]);
  for (const [off, round] of [
    [0, 0],
    [33, 271],
    [180, -90],
  ])
    expect(Number.isFinite(candelaAt(off, round))).toBe(true);
  return true;
}

const WHOLES = [
  AXIAL_LM63,
  lm63Of(steps(0, 90, 15), steps(0, 360, 45), (off, round) => 90 - off + round / 100),
  lm63Of(steps(-90, 90, 15), steps(-90, 90, 15), (up, right) => 200 - Math.abs(up) - Math.abs(right), 2),
  `A lamp\nTILT=INCLUDE\n1\n2\n0 90\n1 1\n1 800 1 2 1 1 1 0 0 0\n1 1 9\n0 90\n0\n100 5\n`,
];
const word = fc.constantFrom(
  '',
  '-1',
  '0',
  '1',
  '2',
  '361',
  '1e9',
  '1e999',
  'NaN',
  '-',
  '.',
  '\u0000',
  'TILT=NONE',
  '\n',
  '\r',
  '90',
  '9'.repeat(400),
);

describe(`seed ${SEED}`, () => {
  test(`files with some words changed, ${RUNS} times: a sentence, or a sound table`, () => {
    let read = 0;
    const change = fc.record({
      whole: fc.constantFrom(...WHOLES),
      words: fc.array(
        fc.record({ at: fc.double({ min: 0, max: 1, maxExcluded: true, noNaN: true }), to: word }),
        {
          minLength: 1,
          maxLength: 3,
        },
      ),
    });
    fc.assert(
      fc.property(change, ({ whole, words }) => {
        const parts = whole.split(/(\s+)/);
        for (const { at, to } of words) parts[Math.floor(at * parts.length)] = to;
        if (holds(parts.join(''))) read += 1;
      }),
      { numRuns: RUNS, seed: SEED },
    );
    console.log(`${read} of ${RUNS} changed files could still be read`);
  });

  test(`files cut short, ${RUNS} times: a sentence, or a sound table`, () => {
    fc.assert(
      fc.property(fc.constantFrom(...WHOLES), fc.double({ min: 0, max: 1, noNaN: true }), (whole, at) => {
        holds(whole.slice(0, Math.floor(at * whole.length)));
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  test(`any text, with and without a header before it, ${RUNS} times: a sentence`, () => {
    fc.assert(
      fc.property(
        fc.constantFrom('', 'IESNA:LM-63-2002\n', 'IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 '),
        fc.string({ unit: 'binary', maxLength: 800 }),
        (header, text) => {
          expect(holds(header + text)).toBe(false);
        },
      ),
      { numRuns: RUNS, seed: SEED },
    );
  });
});
