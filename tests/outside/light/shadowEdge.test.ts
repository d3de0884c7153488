import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { type Face, faceLight } from '../../../src/core/light/face';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';

/** A face that looks at the lamps, along +z, 8 m from the origin where they shine along −z. */
const FACE: Face = {
  performerId: 'nobody',
  at: [0, 2, -8],
  forward: [0, 0, 1],
  right: [-1, 0, 0],
  up: [0, 1, 0],
  headingDegrees: 180,
};
const SPOT = lampAt('lamp', 'spot', [0, 2, 0], [0, 0, -1]);
const frame = (metres: number, z = -4): Gear => ({
  id: 'frame',
  label: 'Frame',
  kind: 'frame',
  place: { at: [0, 2, z] },
  headingDegrees: 0,
  tiltDegrees: 0,
  size: [metres, metres],
  transmission: 0.5,
});
const edgeOf = (gear: readonly Gear[]): number => {
  const { key } = faceLight(lightScene(darkRoof({ gear: [...gear] }), null, 0), FACE);
  return key?.shadowEdgeMetres ?? Number.NaN;
};

describe('the shadow of an edge half a metre before a face', () => {
  test('is as wide as the light, times 0.5 m behind the edge, over the way before it, on paper', () => {
    // A lens of 0.168 m and a panel's face of 0.6 m, 8 m off: 0.168 · 0.5 ÷ 7.5 and 0.6 · 0.5 ÷ 7.5.
    expect(edgeOf([SPOT])).toBeCloseTo(0.0112, 5);
    expect(edgeOf([lampAt('lamp', 'panel', [0, 2, 0], [0, 0, -1])])).toBeCloseTo(0.04, 3);
    // Frames 4 m off, of 4 and of 8 feet: 1.22 · 0.5 ÷ 3.5 and 2.44 · 0.5 ÷ 3.5.
    expect(edgeOf([SPOT, frame(1.22)])).toBeCloseTo(0.17429, 5);
    expect(edgeOf([SPOT, frame(2.44)])).toBeCloseTo(0.34857, 5);
    // The same frame 2 m off: 1.22 · 0.5 ÷ 1.5.
    expect(edgeOf([SPOT, frame(1.22, -6)])).toBeCloseTo(0.40667, 5);
  });

  test('is softest of an 8 by 8 foot frame, harder of a 4 by 4, hardest of the bare head', () => {
    const [bare, four, eight] = [[SPOT], [SPOT, frame(1.22)], [SPOT, frame(2.44)]].map(edgeOf);
    expect(bare).toBeLessThan(four / 4);
    expect(four).toBeLessThan(eight);
  });

  test('is none of a light that is nearer than the edge', () => {
    const { key } = faceLight(
      lightScene(darkRoof({ gear: [lampAt('lamp', 'spot', [0, 2, -7.6], [0, 0, -1])] }), null, 0),
      FACE,
    );
    expect(key?.itemId).toBe('lamp');
    expect(key?.shadowEdgeMetres).toBeNull();
  });

  test('is what a flag there does to the levels: from full shade to full light over that width', () => {
    const panel = lampAt('lamp', 'panel', [0, 2, 0], [0, 0, -1]);
    const width = edgeOf([panel]);
    // The flag's right edge is on the axis, half a metre before the face.
    const scene = lightScene(darkRoof({ gear: [panel, flagAt('flag', [-1.5, 2, -7.5], [3, 3])] }), null, 0);
    const visibleAt = (x: number): number =>
      illuminance(scene, [x, 2, -8] satisfies Vec3, [0, 0, 1]).shares[0]?.visible ?? Number.NaN;
    expect(visibleAt(-0.51 * width)).toBe(0);
    expect(visibleAt(0.51 * width)).toBe(1);
    for (const share of [0.25, 0.5, 0.75])
      expect(Math.abs(visibleAt((share - 0.5) * width) - share)).toBeLessThan(1 / 8 + 1e-9);
  });
});
