import fc from 'fast-check';
import { expect } from 'vitest';
import { serialisePlan } from '../../src/core/plan/serialise';
import { toBase64url } from '../../src/exchange/link/base64url';
import { enclosed } from '../../src/exchange/link/envelope';
import { linkOfPlan, planOfLink } from '../../src/exchange/link/link';
import { packed } from '../../src/exchange/link/v1/pack';
import { DEMO, readPlan, textOf } from '../plans/readPlan';
import { fuzzed } from './fuzzed';
import { changesTo } from './mutation';

/** A demo's link takes some tenths of a second to write and to read; a plan that is read is written and read once more. */
const LONGEST_MS = 5000;

const small = readPlan('tests/plans/paper.plan.json');
const link = linkOfPlan(small).fragment;
const whole = (coded: Uint8Array): string => `1${toBase64url(enclosed(coded))}`;

/** A plan that can be written again, or a fault with one clear sentence; says which. */
function holds(fragment: string): string {
  const read = planOfLink(fragment);
  if (read.ok) {
    expect(planOfLink(linkOfPlan(read.plan).fragment)).toEqual(read);
    expect(serialisePlan(read.plan)).not.toBe('');
    return 'plan';
  }
  expect(read.sentence).toMatch(/^This [^\p{Cc}\u2028\u2029]+\.$/u);
  return read.kind;
}

/** The same for what can be no plan. */
function refused(fragment: string): string {
  const kind = holds(fragment);
  expect(kind).not.toBe('plan');
  return kind;
}

fuzzed(
  'a link: any text',
  fc.oneof(fc.string({ unit: 'binary', maxLength: 300 }), fc.stringMatching(/^#?[12][A-Za-z0-9_-]{0,300}$/)),
  refused,
);

const place = fc.nat({ max: link.length - 1 });
fuzzed(
  'a link: cut, a letter changed, a piece of itself again',
  fc
    .oneof(
      place.map((at) => link.slice(0, at)),
      fc
        .tuple(place, fc.constantFrom('A', '_', '9', '%', '\u0000'))
        .map(([at, letter]) => `${link.slice(0, at)}${letter}${link.slice(at + 1)}`),
      fc.tuple(place, place).map(([from, to]) => link + link.slice(from, to)),
    )
    .filter((text) => text.replace(/\s/g, '') !== link),
  refused,
);

fuzzed('a link: any bytes, whole in themselves', fc.uint8Array({ maxLength: 600 }).map(whole), refused);

const coded = packed(JSON.parse(serialisePlan(small)));
if (!coded) throw new Error('the plan is too large for a link');
// The sum inside is 16 bits long, which one in 65,536 passes: a plan may come of it.
fuzzed(
  'a link: a byte of a plan changed, whole in itself',
  fc.tuple(fc.nat({ max: coded.length - 1 }), fc.integer({ min: 1, max: 255 })).map(([at, by]) => {
    const bytes = coded.slice();
    bytes[at] ^= by;
    return whole(bytes);
  }),
  holds,
  { longestMs: LONGEST_MS },
);

const documents = fc.oneof(
  { weight: 6, arbitrary: changesTo(JSON.parse(serialisePlan(small))) },
  { weight: 1, arbitrary: changesTo(JSON.parse(textOf(DEMO))) },
  { weight: 3, arbitrary: fc.jsonValue({ maxDepth: 6 }) },
);
fuzzed(
  'a link: coded well, of JSON or of a changed plan',
  documents.map((document) => {
    const well = packed(JSON.parse(JSON.stringify(document)));
    return well ? whole(well) : '';
  }),
  holds,
  { longestMs: LONGEST_MS },
);
