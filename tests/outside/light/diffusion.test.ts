import { describe, expect, test } from 'vitest';
import { beamShare, fluxLumens } from '../../../src/core/form/beam';
import { candelaTable } from '../../../src/core/form/photometry/candelaTable';
import type { LampBeam } from '../../../src/core/form/photometry/ownBeam';
import { spreadBeam } from '../../../src/core/form/photometry/spreadBeam';
import { drawFrom } from '../../plans/draw';

const beamOf = (beamDegrees: number, fieldDegrees: number): LampBeam => ({
  peakCandela: 1000,
  beamDegrees,
  fieldDegrees,
  distribution: null,
});
function spreadTable(beam: LampBeam, spreadDegrees: number) {
  const { distribution } = spreadBeam(beam, spreadDegrees);
  if (!distribution) throw new Error('nothing was spread');
  return { ...candelaTable(distribution), distribution };
}
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Lumens of a table by zones of a twentieth of a degree, in the engine's own cosines. */
function lumens(candelaAt: (degrees: number) => number): number {
  let sum = 0;
  for (let zone = 0; zone < 3600; zone += 1) {
    const [from, to] = [radians(zone / 20), radians((zone + 1) / 20)];
    sum += candelaAt((zone + 0.5) / 20) * 2 * Math.PI * (Math.cos(from) - Math.cos(to));
  }
  return sum;
}

describe('diffusion', () => {
  test.each([
    [8, 14, 5],
    [25, 40, 20],
    [25, 40, 60],
    [60, 100, 40],
    [120, 168, 120],
  ])('keeps the lumens of a beam of %i° and %i° that it spreads by %i°', (beam, field, spread) => {
    const own = beamOf(beam, field);
    const { candelaAt, peakCandela, beamDegrees } = spreadTable(own, spread);
    expect(Math.abs(lumens((degrees) => candelaAt(degrees, 0)) / fluxLumens(own) - 1)).toBeLessThan(0.0025);
    expect(peakCandela).toBeLessThan(1000);
    expect(beamDegrees).toBeGreaterThan(beam * 0.99);
  });

  test('makes an even diffuser of a pencil of light: candela by the cosine, lumens ÷ π along the axis', () => {
    const pencil = beamOf(4, 7);
    const { candelaAt } = spreadTable(pencil, 120);
    const along = fluxLumens(pencil) / Math.PI;
    for (const degrees of [0, 20, 45, 60, 75])
      expect(candelaAt(degrees, 0) / along).toBeCloseTo(Math.cos(radians(degrees)), 2);
  });

  test('comes to what rays that are drawn and turned one by one come to', () => {
    const [beam, field, spread] = [30, 50, 25];
    const draw = drawFrom(11);
    const power = -Math.LN2 / Math.log(Math.cos(radians(spread / 2)));
    const rings = new Float64Array(9);
    let count = 0;
    for (let ray = 0; ray < 200_000; ray += 1) {
      // A way drawn evenly over what the beam reaches, kept as often as the beam is strong there.
      const cosine = draw.between(0.6, 1);
      if (draw.between(0, 1) > beamShare(beam, field, cosine)) continue;
      count += 1;
      const turned = draw.between(0, 1) ** (1 / (power + 1));
      const sines = Math.sqrt((1 - cosine * cosine) * (1 - turned * turned));
      const angle = Math.acos(cosine * turned - sines * Math.cos(draw.between(0, 2 * Math.PI)));
      const ring = Math.floor(angle / radians(5));
      if (ring < rings.length) rings[ring] += 1;
    }
    const { candelaAt, lumens: all } = spreadTable(beamOf(beam, field), spread);
    rings.forEach((drawn, ring) => {
      const within = (degrees: number) => (Math.floor(degrees / 5) === ring ? candelaAt(degrees, 0) : 0);
      expect(Math.abs(lumens(within) / all - drawn / count)).toBeLessThan(0.006);
    });
  });

  test('leaves what is even all round, and a spread finer than a table', () => {
    const bulb = beamOf(360, 360);
    expect(spreadBeam(bulb, 60)).toBe(bulb);
    const spot = beamOf(20, 30);
    expect(spreadBeam(spot, 1)).toBe(spot);
  });

  test('of a measured lamp keeps its lumens, and what it sends behind', () => {
    const distribution = {
      verticalDegrees: [0, 60, 90, 150, 180],
      horizontalDegrees: [0, 90, 180, 270, 360],
      candela: [100, 80, 60, 80, 100].map((peak) => [100, peak, peak / 2, peak / 4, 0]),
      source: 'made up',
    };
    const { lumens: own, beamDegrees, fieldDegrees } = candelaTable(distribution);
    const spread = spreadTable({ peakCandela: 100, beamDegrees, fieldDegrees, distribution }, 50);
    expect(spread.lumens / own).toBeCloseTo(1, 6);
    expect(spread.candelaAt(120, 0)).toBeGreaterThan(5);
  });
});
