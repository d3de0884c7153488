import { expect, test } from 'vitest';
import { gateFormat } from '../../../src/core/kit/formats';

const MM_PER_INCH = 25.4;

/** Gates as they are printed elsewhere, with the ceiling of difference that the print's rounding allows. */
const PRINTED: readonly {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly toleranceMm: number;
  readonly from: string;
}[] = [
  {
    id: 'full-aperture-35',
    width: 0.98 * MM_PER_INCH,
    height: 0.735 * MM_PER_INCH,
    toleranceMm: 0.02,
    from: 'Practical Cinematography, 2nd ed., ch. 20: 0.980 × 0.735 in',
  },
  {
    id: 'academy-35',
    width: 22.05,
    height: 16.03,
    toleranceMm: 0.12,
    from: 'nfsa.gov.au preservation glossary, Academy frame; others print 0.866 × 0.630 in',
  },
  {
    id: 'academy-35',
    width: 0.866 * MM_PER_INCH,
    height: 0.63 * MM_PER_INCH,
    toleranceMm: 0.12,
    from: 'the other print of the Academy camera aperture',
  },
  {
    id: 'anamorphic-35',
    width: 0.866 * MM_PER_INCH,
    height: 0.732 * MM_PER_INCH,
    toleranceMm: 0.05,
    from: 'liquisearch.com 35 mm film, technical specifications (encyclopedia copy)',
  },
  {
    id: 'still-35',
    width: 36,
    height: 24,
    toleranceMm: 0,
    from: 'Illustrated dictionary of moving image technology, 4th ed., appendix C',
  },
  {
    id: 'standard-16',
    width: 0.404 * MM_PER_INCH,
    height: 0.295 * MM_PER_INCH,
    toleranceMm: 0.03,
    from: 'colorist.org/archives/oldtig_mhonarc/1998/msg01075.html',
  },
  {
    id: 'three-perf-35',
    width: 0.98 * MM_PER_INCH,
    height: 0.546 * MM_PER_INCH,
    toleranceMm: 0.15,
    from: 'from memory: a trade figure',
  },
  { id: 'four-thirds', width: 17.3, height: 13, toleranceMm: 0.05, from: 'from memory: a trade figure' },
  { id: 'super-16', width: 12.52, height: 7.41, toleranceMm: 0.02, from: 'from memory: a trade figure' },
];

test.each(PRINTED)('$id is $width × $height mm ($from)', ({ id, width, height, toleranceMm }) => {
  const gate = gateFormat(id)?.gateMm ?? [0, 0];
  expect(Math.abs(gate[0] - width)).toBeLessThanOrEqual(toleranceMm + 1e-9);
  expect(Math.abs(gate[1] - height)).toBeLessThanOrEqual(toleranceMm + 1e-9);
});

test('the 4-perf anamorphic gate unsqueezes to 2.367 (its own width over height, twice)', () => {
  const [width, height] = gateFormat('anamorphic-35')?.gateMm ?? [0, 1];
  expect((2 * width) / height).toBeCloseTo(2.367, 2);
});
