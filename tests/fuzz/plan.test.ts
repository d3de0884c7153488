import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parsePlan, parsePlanText } from '../../src/core/plan/parse';
import { reportOf } from '../../src/core/report/report';
import { planToGlb } from '../../src/exchange/glb';
import { brokenNumbers } from '../plans/brokenNumbers';
import { DEMO, textOf } from '../plans/readPlan';
import { type Mutation, mutated, pathsOf } from './mutation';

/** How many plans each test makes, and the seed that makes the same ones again: others each time, unless it is given. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;

const demo: unknown = JSON.parse(textOf(DEMO));
const paths = pathsOf(demo);

/** Values at the edges of what a schema may let through. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(0, -0, -1, 1, 0.5, 1e-9, 5e-324, 1e308, -1e308, 360, -720, 5000, 400, 3600),
  fc.constantFrom<unknown>(null, true, '', ' ', '\u0000', '\u202e', '#ffffff', '__proto__', [], {}, [[]]),
  fc.string({ maxLength: 100 }),
  fc.double(),
  fc.jsonValue({ maxDepth: 3 }),
);

const place = fc.nat({ max: paths.length - 1 });
const mutation: fc.Arbitrary<Mutation> = fc.oneof(
  fc.record({ kind: fc.constant('put' as const), path: place, value: odd }),
  fc.record({ kind: fc.constant('take away' as const), path: place }),
  fc.record({ kind: fc.constant('twice' as const), path: place }),
  fc.record({
    kind: fc.constant('scale' as const),
    path: place,
    by: fc.constantFrom(0, -1, 0.001, 0.5, 2, 100),
  }),
  fc.record({ kind: fc.constant('copy' as const), path: place, from: place }),
);

/** One clear sentence for each fault, or a plan whose stills and scene can be worked out. */
function holds(document: unknown): boolean {
  const parsed = parsePlan(document);
  if (!parsed.ok) {
    expect(parsed.faults.length).toBeGreaterThan(0);
    for (const { sentence } of parsed.faults)
      expect(sentence).toMatch(/^[^\n]+: found [^\n]+, expected [^\n]+\.$/);
    return false;
  }
  for (const setup of parsed.value.setups) {
    const { atSeconds } = parsed.value.beats.find(({ id }) => id === setup.span.from) ?? { atSeconds: 0 };
    const report = reportOf(parsed.value, { setupIds: [setup.id], at: atSeconds });
    expect(brokenNumbers(report)).toEqual([]);
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
  }
  expect(planToGlb(parsed.value, 0).length).toBeGreaterThan(0);
  return true;
}

describe(`seed ${SEED}`, () => {
  test(`the demo plan with one thing changed, ${RUNS} times: faults, or a report`, () => {
    let read = 0;
    fc.assert(
      fc.property(mutation, (change) => {
        if (holds(mutated(demo, paths, change))) read += 1;
      }),
      { numRuns: RUNS, seed: SEED },
    );
    console.log(`${read} of ${RUNS} changed plans could still be read`);
  });

  test(`any JSON, ${RUNS} times: faults`, () => {
    fc.assert(
      fc.property(fc.jsonValue({ maxDepth: 6 }), (value) => {
        expect(holds(value)).toBe(false);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  test(`any JSON that says it is a plan, ${RUNS} times: faults`, () => {
    const sections = fc.dictionary(
      fc.constantFrom(...Object.keys(demo ?? {})),
      fc.jsonValue({ maxDepth: 4 }),
    );
    fc.assert(
      fc.property(sections, (document) => {
        expect(holds({ ...document, standclear: 1 })).toBe(false);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });

  test(`any text, ${RUNS} times: a fault`, () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 500 }), (text) => {
        const parsed = parsePlanText(text);
        expect(parsed.ok).toBe(false);
        if (!parsed.ok)
          for (const { sentence } of parsed.faults) expect(sentence).not.toMatch(/[\p{Cc}\u2028\u2029]/u);
      }),
      { numRuns: RUNS, seed: SEED },
    );
  });
});
