import { describe, expect, test } from 'vitest';
import { circleOf } from '../../../src/core/optics/circleOf';
import { angleDegrees, extraction } from '../../../src/core/optics/gate';
import { smallRoof } from '../../unit/smallRoof';

describe('a squeeze', () => {
  test.each([
    [50, 2],
    [75, 2],
    [40, 1.8],
    [65, 1.5],
    [100, 1.33],
  ])(
    '%i mm with %f× takes in across what a spherical lens of the focal length over the squeeze does',
    (focal, squeeze) => {
      const gate = [22, 18.59] as const;
      const whole = (squeeze * gate[0]) / gate[1];
      const squeezed = extraction(gate, focal, squeeze, whole);
      const across = extraction(gate, focal / squeeze, 1, gate[0] / gate[1]);
      const upright = extraction(gate, focal, 1, gate[0] / gate[1]);
      expect(angleDegrees(squeezed.tanHalfWidth)).toBeCloseTo(angleDegrees(across.tanHalfWidth), 12);
      expect(angleDegrees(squeezed.tanHalfHeight)).toBeCloseTo(angleDegrees(upright.tanHalfHeight), 12);
    },
  );
});

/** Share of the delivered picture outside the drawn ellipse, counted point by point. */
function countedDark([rx, ry]: readonly [number, number], points = 1200): number {
  let dark = 0;
  for (let i = 0; i < points; i += 1)
    for (let k = 0; k < points; k += 1) {
      const x = ((i + 0.5) / points - 0.5) / rx;
      const y = ((k + 0.5) / points - 0.5) / ry;
      if (x * x + y * y > 1) dark += 1;
    }
  return dark / (points * points);
}

describe('an image circle over a gate', () => {
  const withCircle = (imageCircleMm: number, gateMm: [number, number], squeeze: number, delivery: number) => {
    const plan = smallRoof();
    const [setup] = plan.setups;
    for (const lens of plan.kit.lenses) Object.assign(lens, { imageCircleMm, squeeze });
    for (const body of plan.kit.bodies) for (const mode of body.modes) mode.gateMm = gateMm;
    const circle = circleOf(plan, { ...setup, delivery });
    if (!circle) throw new Error('the circle is known');
    return circle;
  };

  test.each([
    [20, 22, 18.59, 2, 2.39],
    [24, 36, 24, 1, 1.5],
    [16, 24.892, 18.669, 1, 2.39],
    [12, 24, 18, 1.33, 1.78],
    [9, 22, 18.59, 2, 9 / 16],
  ])(
    'of %f mm on %f × %f mm, %f×, delivered in %f, leaves dark what is counted',
    (circleMm, w, h, squeeze, delivery) => {
      const circle = withCircle(circleMm, [w, h], squeeze, delivery);
      expect(circle.delivery.covers).toBe(false);
      expect(Math.abs(countedDark(circle.halfAxes) - circle.delivery.darkShare)).toBeLessThan(2e-4);
      // Unsqueezed the circle is an ellipse, wider than high by the squeeze.
      expect((circle.halfAxes[0] * delivery) / circle.halfAxes[1]).toBeCloseTo(squeeze, 12);
    },
  );

  test('covers what its diameter says: 43.3 mm the still frame of 36 × 24, 31.1 mm does not', () => {
    expect(withCircle(43.3, [36, 24], 1, 1.5).gate.covers).toBe(true);
    const cut = withCircle(31.1, [36, 24], 1, 1.5);
    expect(cut.gate.covers).toBe(false);
    expect(cut.gate.neededMm).toBeCloseTo(Math.hypot(36, 24), 9);
    // A square of it is small enough.
    expect(withCircle(34, [36, 24], 1, 1).delivery.covers).toBe(true);
    expect(withCircle(33.9, [36, 24], 1, 1).delivery.covers).toBe(false);
  });
});
