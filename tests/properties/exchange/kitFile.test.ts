import fc from 'fast-check';
import Papa from 'papaparse';
import { expect, test } from 'vitest';
import { ownKitText, readOwnKit } from '../../../src/core/kit/ownKit';
import { type Body, LENS_LIMITS, type Lens, MODE_LIMITS } from '../../../src/core/plan/schema/kit';
import { bodiesCsv, lensesCsv, readBodiesCsv, readLensesCsv } from '../../../src/exchange/kitFileCsv';

const text = fc.oneof(
  fc.string({ minLength: 1, maxLength: 80 }),
  fc.string({ minLength: 1, maxLength: 80, unit: 'binary' }),
  fc.string({
    minLength: 1,
    maxLength: 12,
    unit: fc.constantFrom('=', "'", '"', ',', ';', '\n', '\r', '\t', ' ', '@', '-', 'a', '1'),
  }),
);
const id = fc.stringMatching(/^[A-Za-z0-9](?:[A-Za-z0-9-]{0,10}[A-Za-z0-9])?$/);
const between = ([min, max]: readonly [number, number]) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map((value) => value + 0);
const option = <Value>(arbitrary: fc.Arbitrary<Value>) => fc.option(arbitrary, { nil: undefined });

const defined = <Entry extends object>(entry: Entry): object =>
  Object.fromEntries(Object.entries(entry).filter(([, value]) => value !== undefined));

const lens = fc
  .record({
    id,
    label: text,
    set: option(text),
    focalMm: between(LENS_LIMITS.focalMm),
    longestMm: option(between(LENS_LIMITS.longestMm)),
    squeeze: between(LENS_LIMITS.squeeze),
    widestStop: between([0.5, 8]),
    narrowestStop: between([8, 128]),
    closeFocusMetres: between(LENS_LIMITS.closeFocusMetres),
    imageCircleMm: option(between(LENS_LIMITS.imageCircleMm)),
    pupilToImageMm: option(between(LENS_LIMITS.pupilToImageMm)),
    distortion: option(
      fc.record({
        k1: between(LENS_LIMITS.k1),
        k2: between(LENS_LIMITS.k2),
        k3: between(LENS_LIMITS.k3),
        p1: between(LENS_LIMITS.p1),
        p2: between(LENS_LIMITS.p2),
      }),
    ),
    frontDiameterMm: option(between(LENS_LIMITS.frontDiameterMm)),
    kilograms: option(between(LENS_LIMITS.kilograms)),
    source: option(text),
  })
  .map((entry) => defined(entry) as Lens);

const body = fc
  .record({
    id,
    label: text,
    modes: fc.uniqueArray(
      fc
        .record({
          id,
          label: text,
          gateMm: fc.tuple(between(MODE_LIMITS.gateMm), between(MODE_LIMITS.gateMm)),
          circleMm: option(between(MODE_LIMITS.circleMm)),
        })
        .map((mode) => defined(mode) as Body['modes'][number]),
      { minLength: 1, maxLength: 4, selector: (mode) => mode.id },
    ),
    source: option(text),
  })
  .map((entry) => defined(entry) as Body);

const list = <Entry extends { readonly id: string }>(entry: fc.Arbitrary<Entry>) =>
  fc.uniqueArray(entry, { maxLength: 6, selector: (each) => each.id });

test('lenses come back from comma-separated values as they went', () => {
  fc.assert(
    fc.property(list(lens), (lenses) => {
      expect(readLensesCsv(lensesCsv(lenses))).toEqual({ entries: lenses, faults: [] });
    }),
    { numRuns: 500 },
  );
});

test('bodies come back from comma-separated values as they went', () => {
  fc.assert(
    fc.property(list(body), (bodies) => {
      expect(readBodiesCsv(bodiesCsv(bodies))).toEqual({ entries: bodies, faults: [] });
    }),
    { numRuns: 500 },
  );
});

test('a kit comes back from JSON as it went', () => {
  fc.assert(
    fc.property(list(body), list(lens), (bodies, lenses) => {
      expect(readOwnKit(ownKitText({ bodies, lenses }))).toEqual({ ok: true, value: { bodies, lenses } });
    }),
  );
});

test('no cell that goes out begins as a formula', () => {
  fc.assert(
    fc.property(list(lens), (lenses) => {
      const file = lensesCsv(lenses.map((each) => ({ ...each, label: `=${each.label}`.slice(0, 80) })));
      const cells = Papa.parse<string[]>(file, { delimiter: ',', newline: '\r\n' }).data.flat();
      expect(cells.filter((cell) => /^[=@\t\r]/.test(cell))).toEqual([]);
    }),
  );
});

test('whatever text comes in is answered with entries and sentences, never with a fall', () => {
  fc.assert(
    fc.property(fc.oneof(fc.string(), fc.string({ unit: 'binary' })), (anything) => {
      for (const read of [readLensesCsv, readBodiesCsv]) {
        const { faults } = read(`label,focalMm,squeeze\r\n${anything}`);
        for (const { line, sentence } of [...faults, ...read(anything).faults]) {
          expect(line).toBeGreaterThan(0);
          expect(sentence).toMatch(/^Line \d+.*: found [\s\S]*, expected [\s\S]*\.$/);
        }
      }
    }),
  );
});
