import { expect, test } from 'vitest';
import { focusGlassOf, focusSampleAt } from '../../../src/core/continuity/focusTrack';
import { cameraAt } from '../../../src/core/optics/camera';
import { extraction } from '../../../src/core/optics/gate';
import { projectPoint } from '../../../src/core/optics/project';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { planFrom } from '../../plans/bare';
import { smallRoofDocument } from '../../unit/smallRoof';
import { inPixels, type Matrix } from './calibration';

type Pair = readonly [number, number];

const base = smallRoofDocument();

/** A plan with one still camera at the origin that looks along −z, on a gate and a lens, all of the gate delivered. */
function planOn(gateMm: Pair, focalMm: number, squeeze: number): Plan {
  const [lens] = base.kit.lenses;
  return planFrom({
    ...base,
    gear: [],
    kit: {
      ...base.kit,
      bodies: [
        { id: 'body', label: 'Body', modes: [{ id: 'mode', label: 'Mode', gateMm, circleMm: 0.025 }] },
      ],
      lenses: [{ ...lens, id: 'glass', focalMm, squeeze, closeFocusMetres: 0.5, pupilToImageMm: 0 }],
    },
    setups: [
      {
        ...base.setups[0],
        body: 'body',
        mode: 'mode',
        lens: 'glass',
        delivery: (squeeze * gateMm[0]) / gateMm[1],
        focus: { metres: 3 },
        move: {
          ease: 'linear',
          keys: [{ atSeconds: 0, position: [0, 1.5, 0], headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0 }],
        },
      },
    ],
  });
}

/** The camera matrix of cv2.calibrationMatrixValues's rows: fx = f/squeeze/width × pixels, fy = f/height × pixels. */
const matrixOf = (gateMm: Pair, focalMm: number, squeeze: number, pixels: Pair): Matrix => ({
  fx: (focalMm / squeeze / gateMm[0]) * pixels[0],
  fy: (focalMm / gateMm[1]) * pixels[1],
  cx: pixels[0] / 2,
  cy: pixels[1] / 2,
});

/**
 * A lens of squeeze s and focal length f sees across as a spherical lens of f/s, and up and down as one of f: the
 * handbook's tan(half) = (A/2 × squeeze)/f, jukolart.us lens angle and field of view; exact.
 */
test.each([
  [[21.95, 18.6], 50, 2],
  [[22, 18.59], 40, 2],
  [[36, 24], 75, 1.6],
  [[24.89, 18.66], 100, 2],
  [[24.89, 18.66], 35, 1.33],
] as const)('on %s mm, %s mm at %s× is a spherical lens f/s wide and f high', (gateMm, focalMm, squeeze) => {
  const aspect = gateMm[0] / gateMm[1];
  const bent = extraction(gateMm, focalMm, squeeze, aspect * squeeze);
  const across = extraction(gateMm, focalMm / squeeze, 1, aspect);
  const upright = extraction(gateMm, focalMm, 1, aspect);
  expect(bent.tanHalfWidth).toBeCloseTo(across.tanHalfWidth, 12);
  expect(bent.tanHalfHeight).toBeCloseTo(upright.tanHalfHeight, 12);
});

/** Pixel aspect fy/fx as cv2.calibrationMatrixValues prints it for its rows, OpenCV 4.6.0 for Python. */
test.each([
  [[21.95, 18.6], 50, 2, [2195, 1860], 2],
  [[36, 24], 50, 1, [3600, 2400], 1],
] as const)('the pixels of %s mm at %s mm, %s×, %s are %s', (gateMm, focalMm, squeeze, pixels, aspect) => {
  const { fx, fy } = matrixOf(gateMm, focalMm, squeeze, pixels);
  expect(Math.abs(fy / fx - aspect)).toBeLessThan(1e-3);
  // A camera of a plan puts a point where x fx/z + cx, y fy/z + cy does (the pinhole of OpenCV's documentation).
  const plan = planOn(gateMm, focalMm, squeeze);
  const camera = cameraAt(plan, plan.setups[0], 0);
  const place = projectPoint(camera, [0.4, 1.5 + 0.3, -5]);
  if (!place) throw new Error('the point lies in front of the camera');
  const [x, y] = inPixels({ fx, fy, cx: pixels[0] / 2, cy: pixels[1] / 2 }, place);
  expect(x).toBeCloseTo((0.4 / 5) * fx + pixels[0] / 2, 6);
  expect(y).toBeCloseTo((-0.3 / 5) * fy + pixels[1] / 2, 6);
});

/**
 * Depth of field of an anamorphic lens is its upright axis's, that of the whole focal length: with 50 mm at N 2.8,
 * circle 0.025 mm, focused at 3 m near 2771.1 and far 3270.1 mm, whatever the squeeze. The handbook form, worked by hand.
 */
test.each([1, 1.33, 2])('50 mm at %s× has the depth of 50 mm upright', (squeeze) => {
  const plan = planOn([22, 18.59], 50, squeeze);
  const [setup] = plan.setups;
  expect(focusGlassOf(plan, setup, 0)).toEqual({ focalMm: 50, stop: 2.8, circleMm: 0.025 });
  const { nearMetres, farMetres } = focusSampleAt(plan, setup, 0);
  expect(Math.abs((nearMetres ?? 0) * 1000 - 2771.1)).toBeLessThan(1);
  expect(Math.abs((farMetres ?? 0) * 1000 - 3270.1)).toBeLessThan(1);
});

/** What a projector shows, from nfsa.gov.au preservation glossary, Academy frame: 20.96 × 15.25 mm is 1.37:1. */
test('the Academy projector aperture is 1.37', () => {
  const { tanHalfWidth, tanHalfHeight } = extraction([20.96, 15.25], 50, 1, 20.96 / 15.25);
  expect(Math.abs(tanHalfWidth / tanHalfHeight - 1.37)).toBeLessThan(0.01);
});
