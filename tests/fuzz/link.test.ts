import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { serialisePlan } from '../../src/core/plan/serialise';
import { toBase64url } from '../../src/exchange/link/base64url';
import { enclosed } from '../../src/exchange/link/envelope';
import { linkOfPlan, planOfLink } from '../../src/exchange/link/link';
import { packed } from '../../src/exchange/link/v1/pack';
import { DEMO, readPlan, textOf } from '../plans/readPlan';
import { type Mutation, mutated, pathsOf } from './mutation';

/** How many links each test makes, and the seed that makes the same ones again: others each time, unless it is given. */
const RUNS = Number(process.env.FUZZ_RUNS ?? 300);
const given = Number(process.env.FUZZ_SEED ?? Number.NaN);
const SEED = Number.isInteger(given) ? given : Date.now() % 2 ** 31;
/** No link that fits into a letter may take longer to be refused or read, ms: far more than any does. */
const LONGEST = 20_000;

const small = readPlan('tests/plans/paper.plan.json');
const link = linkOfPlan(small).fragment;
const whole = (coded: Uint8Array): string => `1${toBase64url(enclosed(coded))}`;

/** A plan that can be written again, or a fault with one clear sentence; says which. */
function holds(fragment: string): string {
  const begun = performance.now();
  const read = planOfLink(fragment);
  expect(performance.now() - begun).toBeLessThan(LONGEST);
  if (read.ok) {
    expect(planOfLink(linkOfPlan(read.plan).fragment)).toEqual(read);
    expect(serialisePlan(read.plan)).not.toBe('');
    return 'plan';
  }
  expect(read.sentence).toMatch(/^This [^\p{Cc}\u2028\u2029]+\.$/u);
  return read.kind;
}

function counted(arbitrary: fc.Arbitrary<string>): Record<string, number> {
  const kinds: Record<string, number> = {};
  fc.assert(
    fc.property(arbitrary, (fragment) => {
      const kind = holds(fragment);
      kinds[kind] = (kinds[kind] ?? 0) + 1;
    }),
    { numRuns: RUNS, seed: SEED },
  );
  return kinds;
}

describe(`seed ${SEED}`, () => {
  test(`any text, ${RUNS} times: a fault`, () => {
    const text = fc.oneof(
      fc.string({ unit: 'binary', maxLength: 300 }),
      fc.stringMatching(/^#?[1-9][A-Za-z0-9_-]{0,300}$/),
    );
    expect(counted(text)).not.toHaveProperty('plan');
  });

  test(`a link cut, with a letter changed, or with a piece of itself again, ${RUNS} times: a fault`, () => {
    const place = fc.nat({ max: link.length - 1 });
    const changed = fc.oneof(
      place.map((at) => link.slice(0, at)),
      fc.tuple(place, fc.constantFrom('A', '_', '9', '%', '\u0000')).map(([at, letter]) => {
        return `${link.slice(0, at)}${letter}${link.slice(at + 1)}`;
      }),
      fc.tuple(place, place).map(([from, to]) => link + link.slice(from, to)),
    );
    const kinds = counted(changed.filter((text) => text.replace(/\s/g, '') !== link));
    expect(kinds).not.toHaveProperty('plan');
  });

  test(`any bytes that are whole in themselves, ${RUNS} times: a fault`, () => {
    expect(counted(fc.uint8Array({ maxLength: 600 }).map(whole))).not.toHaveProperty('plan');
  });

  test(`the bytes of a plan with one changed, whole in themselves, ${RUNS} times: a fault`, () => {
    const coded = packed(JSON.parse(serialisePlan(small)));
    if (!coded) throw new Error('too large');
    const changed = fc
      .tuple(fc.nat({ max: coded.length - 1 }), fc.integer({ min: 1, max: 255 }))
      .map(([at, by]) => {
        const bytes = coded.slice();
        bytes[at] ^= by;
        return whole(bytes);
      });
    const { plan = 0, ...faults } = counted(changed);
    // The sum inside is 16 bits long, which one in 65,536 passes.
    expect(plan).toBeLessThanOrEqual(Math.ceil(RUNS / 5000));
    console.log(faults);
  });

  test(`well-coded JSON that is no plan, or a plan with one thing changed, ${RUNS} times: faults, or plans`, () => {
    const demo: unknown = JSON.parse(textOf(DEMO));
    const paths = pathsOf(demo);
    const place = fc.nat({ max: paths.length - 1 });
    const mutation: fc.Arbitrary<Mutation> = fc.oneof(
      fc.record({ kind: fc.constant('put' as const), path: place, value: fc.jsonValue({ maxDepth: 3 }) }),
      fc.record({ kind: fc.constant('take away' as const), path: place }),
      fc.record({ kind: fc.constant('copy' as const), path: place, from: place }),
    );
    const documents = fc.oneof(
      mutation.map((change) => mutated(demo, paths, change)),
      fc.jsonValue({ maxDepth: 6 }),
    );
    const links = documents.map((document) => {
      const coded = packed(JSON.parse(JSON.stringify(document)));
      return coded ? whole(coded) : '';
    });
    console.log(counted(links));
  });
});
