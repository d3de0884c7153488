import { fc, test as prop } from '@fast-check/vitest';
import { expect } from 'vitest';
import { fluxLumens } from '../../../src/core/form/beam';
import { candelaTable } from '../../../src/core/form/photometry/candelaTable';
import type { LampBeam } from '../../../src/core/form/photometry/ownBeam';
import { beforeShare, throughBefore } from '../../../src/core/form/photometry/throughBefore';
import { drawFrom } from '../../plans/draw';
import { someBefore } from '../../plans/someBefore';

const lumensOf = (beam: LampBeam): number => {
  if (!beam.distribution) return fluxLumens(beam);
  const { lumens, peakCandela } = candelaTable(beam.distribution);
  return (lumens * beam.peakCandela) / peakCandela;
};

prop.prop([fc.integer({ min: 0, max: 2 ** 31 - 1 })], { numRuns: 40 })(
  'whatever is before a lamp, its lumens are those that come through, and nothing is gained',
  (seed) => {
    const draw = drawFrom(seed);
    const beamDegrees = draw.pick([4, 20, 60, 110, 360]);
    const fieldDegrees = Math.min(360, beamDegrees * draw.between(1.2, 2));
    const beam = { peakCandela: draw.between(10, 1e5), beamDegrees, fieldDegrees, distribution: null };
    const kelvin = draw.between(1800, 9000);
    const before = someBefore(draw);
    const light = throughBefore(beam, kelvin, before);
    const share = beforeShare(before, kelvin);
    expect(share).toBeGreaterThan(0);
    expect(share).toBeLessThanOrEqual(1);
    expect(lumensOf(light.beam) / (lumensOf(beam) * share)).toBeCloseTo(1, 3);
    expect(light.beam.peakCandela).toBeLessThanOrEqual(beam.peakCandela * 1.0001);
    expect(light.kelvin).toBeGreaterThanOrEqual(1000);
    expect(light.kelvin).toBeLessThanOrEqual(40000);
    expect(throughBefore(beam, kelvin, before)).toBe(light);
  },
);
