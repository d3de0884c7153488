import { fc, test } from '@fast-check/vitest';
import { expect } from 'vitest';
import { serialisePlan } from '../../../src/core/plan/serialise';
import { fromBase64url, toBase64url } from '../../../src/exchange/link/base64url';
import { disclosed, enclosed } from '../../../src/exchange/link/envelope';
import { linkOfPlan, planOfLink } from '../../../src/exchange/link/link';
import { nextNumber } from '../../../src/exchange/link/v1/foretold';
import { lettersOf, textOfLetters } from '../../../src/exchange/link/v1/letters';
import { packed, unpacked } from '../../../src/exchange/link/v1/pack';
import { randomPlan } from '../../plans/crowd';
import { cases, fewCases, handful } from '../../thorough';

test.prop([fc.nat()], { numRuns: handful(100) })('any plan comes back from its link, to the byte', (seed) => {
  const plan = randomPlan(seed);
  const { fragment } = linkOfPlan(plan);
  const read = planOfLink(fragment);
  if (!read.ok) throw new Error(read.sentence);
  expect(read.plan).toEqual(plan);
  expect(serialisePlan(read.plan)).toBe(serialisePlan(plan));
  expect(linkOfPlan(read.plan).fragment).toBe(fragment);
});

const text = fc.string({ unit: 'binary', maxLength: 60 });
const document = fc.letrec((tie) => ({
  value: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    text,
    fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0),
    fc.constantFrom(null, true, false, 0, 0.1, 1e21, 5e-324, -1.7e308),
    fc.array(tie('value'), { maxLength: 8 }),
    fc.dictionary(fc.oneof(text, fc.constantFrom('kind', 'id', 'label', '__proto__', '7')), tie('value'), {
      maxKeys: 6,
    }),
  ),
}));

test.prop([document.value], { numRuns: fewCases(300) })('any JSON comes back from its bytes', (value) => {
  const json: unknown = JSON.parse(JSON.stringify(value));
  const coded = packed(JSON.parse(JSON.stringify(value)));
  if (!coded) throw new Error('too large');
  const read = unpacked(coded);
  if (!read.ok) throw new Error(read.kind);
  expect(JSON.parse(read.text)).toEqual(json);
});

test.prop(
  [fc.string({ unit: fc.nat({ max: 0xffff }).map((unit) => String.fromCharCode(unit)), maxLength: 40 })],
  {
    numRuns: cases(300),
  },
)('any string comes back from its letters, none of which is 0', (string) => {
  const letters = lettersOf(string);
  expect(letters).not.toContain(0);
  expect(textOfLetters(letters)).toBe(string);
});

test.prop([fc.uint8Array({ maxLength: 400 }), fc.nat()], { numRuns: cases(300) })(
  'bytes come back from letters and envelope; one that is gone or changed is noticed',
  (bytes, at) => {
    expect(fromBase64url(toBase64url(bytes))).toEqual(bytes);
    const whole = enclosed(bytes);
    expect(disclosed(whole)).toEqual(bytes);
    const shorter = whole.slice(0, at % whole.length);
    expect(disclosed(shorter)).toBe('cut');
    const changed = whole.slice();
    changed[at % whole.length] ^= 1 << (at % 8);
    expect(['cut', 'altered']).toContain(disclosed(changed));
  },
);

test.prop(
  [fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: -9999, max: 9999 }), fc.nat({ max: 3 })],
  {
    numRuns: cases(300),
  },
)(
  'the number that goes on in even steps is the one that arithmetic gives, as JSON writes it',
  (a, b, places) => {
    const scale = 10 ** places;
    expect(nextNumber(JSON.stringify(a / scale), JSON.stringify(b / scale))).toBe(
      JSON.stringify((2 * a - b) / scale + 0),
    );
  },
);
