import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  barMetres,
  fittedView,
  pannedBy,
  pixelsPerMetre,
  scaleOf,
  toPane,
  toRoof,
  type View,
  zoomedAbout,
} from '../../../../src/screens/overhead/geometry/sheet';
import type { Spot } from '../../../../src/screens/overhead/geometry/spots';

const PANE = { width: 712, height: 696 };
const place = fc.tuple(
  fc.double({ min: -60, max: 60, noNaN: true }),
  fc.double({ min: -60, max: 60, noNaN: true }),
);
const view = fc.record({ middle: place, denominator: fc.double({ min: 10, max: 2000, noNaN: true }) });
const pointer = fc.tuple(
  fc.double({ min: 0, max: 712, noNaN: true }),
  fc.double({ min: 0, max: 696, noNaN: true }),
);

describe('scale', () => {
  test.prop([view, place])(
    'a metre is 96 / 0.0254 / N pixels, to the last bit that counts',
    (seen, [x, z]) => {
      const from = toPane(seen, PANE, [x, z]);
      const to = toPane(seen, PANE, [x + 1, z]);
      expect(to[0] - from[0]).toBeCloseTo(96 / 0.0254 / scaleOf(seen), 8);
      expect(to[1] - from[1]).toBe(0);
    },
  );

  test('at 1 : 140 a metre takes 26.997 pixels', () => {
    expect(pixelsPerMetre(140)).toBeCloseTo(26.99663, 5);
  });

  test.prop([view, pointer])('pane to roof and back', (seen, at) => {
    const back = toPane(seen, PANE, toRoof(seen, PANE, at));
    expect(back[0]).toBeCloseTo(at[0], 6);
    expect(back[1]).toBeCloseTo(at[1], 6);
  });
});

describe('view', () => {
  const margins = { left: 40, top: 60, right: 20, bottom: 120 };

  test('a deck of 24 × 16 m fits between the margins at a whole scale', () => {
    const fitted = fittedView([-12, -8, 12, 8], PANE, margins);
    expect(scaleOf(fitted) % 5).toBe(0);
    const [left, top] = toPane(fitted, PANE, [-12, -8]);
    const [right, bottom] = toPane(fitted, PANE, [12, 8]);
    expect(left).toBeGreaterThanOrEqual(40 - 1e-6);
    expect(top).toBeGreaterThanOrEqual(60 - 1e-6);
    expect(right).toBeLessThanOrEqual(712 - 20 + 1e-6);
    expect(bottom).toBeLessThanOrEqual(696 - 120 + 1e-6);
    // A size larger, and it would no longer fit.
    const scale = scaleOf(fitted) - 5;
    expect(24 * pixelsPerMetre(scale)).toBeGreaterThan(712 - 60);
  });

  test.prop([view, pointer, fc.double({ min: 0.2, max: 5, noNaN: true })])(
    'zooming keeps what is under the pointer there',
    (seen, at, factor) => {
      const under = toRoof(seen, PANE, at);
      const after: Spot = toPane(zoomedAbout(seen, PANE, at, factor), PANE, under);
      expect(after[0]).toBeCloseTo(at[0], 6);
      expect(after[1]).toBeCloseTo(at[1], 6);
    },
  );

  test('small turns of the wheel add up though the scale is a whole number', () => {
    let seen: View = { middle: [0, 0], denominator: 140 };
    for (let step = 0; step < 100; step += 1) seen = zoomedAbout(seen, PANE, [0, 0], 1.001);
    expect(scaleOf(seen)).toBe(Math.round(140 / 1.001 ** 100));
  });

  test.prop([view, pointer])('panning moves a place by as many pixels', (seen, by) => {
    const before = toPane(seen, PANE, [1, 2]);
    const after = toPane(pannedBy(seen, by), PANE, [1, 2]);
    expect(after[0] - before[0]).toBeCloseTo(by[0], 6);
    expect(after[1] - before[1]).toBeCloseTo(by[1], 6);
  });

  test('the scale bar is a round length that has room', () => {
    expect(barMetres(140, 150)).toBe(5);
    expect(barMetres(100, 150)).toBe(2);
    expect(barMetres(20, 150)).toBe(0.5);
  });
});
