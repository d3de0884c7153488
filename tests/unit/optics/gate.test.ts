import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { frameShapeOf, glassOf, spanOf } from '../../../src/core/optics/camera';
import { deliveryWithin, safeAreas } from '../../../src/core/optics/frameLines';
import { extraction } from '../../../src/core/optics/gate';
import { smallRoof } from '../smallRoof';

const millimetres = fc.double({ min: 1, max: 200, noNaN: true });
const focal = fc.double({ min: 4, max: 1200, noNaN: true });
const squeezes = fc.constantFrom(1, 1.25, 1.33, 1.5, 1.6, 1.65, 1.8, 2);
const aspects = fc.double({ min: 0.2, max: 5, noNaN: true });

describe('what a delivery takes out of a gate', () => {
  test('a narrower one uses the whole height', () => {
    // Unsqueezed the gate is 2 × 24 / 18 = 2.667 wide; 2.39 is narrower: 2.39 × 18 / 2 = 21.51 mm of the width.
    const { usedMm } = extraction([24, 18], 50, 2, 2.39);
    expect(usedMm[0]).toBeCloseTo(21.51, 12);
    expect(usedMm[1]).toBe(18);
  });

  test('a wider one uses the whole width', () => {
    // 24 / 18 = 1.333; 2.39 is wider: 24 / 2.39 = 10.042 mm of the height.
    const { usedMm } = extraction([24, 18], 50, 1, 2.39);
    expect(usedMm[0]).toBe(24);
    expect(usedMm[1]).toBeCloseTo(24 / 2.39, 12);
  });

  propertyTest.prop([millimetres, millimetres, focal, squeezes, aspects])(
    'fits the gate, fills one of its sides and has the delivery’s aspect in its angles',
    (width, height, focalMm, squeeze, aspect) => {
      const { usedMm, tanHalfWidth, tanHalfHeight } = extraction([width, height], focalMm, squeeze, aspect);
      expect(usedMm[0]).toBeLessThanOrEqual(width * (1 + 1e-12));
      expect(usedMm[1]).toBeLessThanOrEqual(height * (1 + 1e-12));
      expect(usedMm[0] === width || usedMm[1] === height).toBe(true);
      expect(tanHalfWidth / tanHalfHeight / aspect).toBeCloseTo(1, 12);
    },
  );
});

describe('a setup’s frame', () => {
  test('takes the aspect of the delivery, whatever gate and squeeze', () => {
    const plan = smallRoof();
    for (const setup of plan.setups) {
      const { tanHalfWidth, tanHalfHeight, aspect, distortion } = frameShapeOf(plan, setup);
      expect(aspect).toBe(setup.delivery);
      expect(tanHalfWidth / tanHalfHeight).toBeCloseTo(setup.delivery, 12);
      expect(distortion).toBeNull();
    }
  });

  test('counts a lens with five noughts as one that does not bend', () => {
    const plan = smallRoof();
    plan.kit.lenses[0].distortion = { k1: 0, k2: 0, k3: 0, p1: 0, p2: 0 };
    expect(frameShapeOf(plan, plan.setups[0]).distortion).toBeNull();
    plan.kit.lenses[0].distortion = { k1: 0, k2: 0, k3: 0, p1: 0.001, p2: 0 };
    expect(frameShapeOf(plan, plan.setups[0]).distortion).toEqual(plan.kit.lenses[0].distortion);
  });

  test('says which body, mode, lens or beat is missing', () => {
    const plan = smallRoof();
    const setup = { ...plan.setups[0], lens: 'none', span: { from: 'start', to: 'never' } };
    expect(() => glassOf(plan, setup)).toThrow(
      'setup "master" names body "body-a", mode "full", lens "none"',
    );
    expect(() => spanOf(plan, setup)).toThrow('the beat "never"');
  });
});

describe('lines in the frame', () => {
  test('a second delivery lies in the middle of the first, as large as it fits', () => {
    expect(deliveryWithin(2, 1)).toEqual([0.25, 0, 0.75, 1]);
    expect(deliveryWithin(1, 2)).toEqual([0, 0.25, 1, 0.75]);
    expect(deliveryWithin(1.85, 1.85)).toEqual([0, 0, 1, 1]);
  });

  propertyTest.prop([aspects, aspects])('it has the second’s aspect', (outer, inner) => {
    const [left, top, right, bottom] = deliveryWithin(outer, inner);
    expect(((right - left) * outer) / (bottom - top) / inner).toBeCloseTo(1, 10);
    expect(Math.min(left, top)).toBe(0);
  });

  test('the title area lies inside the action area', () => {
    for (const aspect of [4 / 3, 16 / 9, 2.39]) {
      const { action, title } = safeAreas(aspect);
      expect(title[0]).toBeGreaterThan(action[0]);
      expect(title[3]).toBeLessThan(action[3]);
    }
  });
});
