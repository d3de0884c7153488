import { PerspectiveCamera, Vector3 } from 'three';
import { expect, test } from 'vitest';
import { angleDegrees, extraction } from '../../../src/core/optics/gate';
import { poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';

/** Most that an angle may differ, degrees, and a place in the picture, in half frames: the table prints five and six decimals. */
const CEILING_DEGREES = 1e-5;
const CEILING_PLACE = 1e-6;

/** three 0.187.0, PerspectiveCamera: filmGauge is the wider side of the film, fov is vertical; degrees. */
const CAMERAS: readonly {
  readonly name: string;
  readonly aspect: number;
  readonly gaugeMm: number;
  readonly focalMm: number;
  readonly vertical: number;
  readonly horizontal: number;
  /** Where (1, 0.5, −5) falls, −1 to 1 to the right and upwards. */
  readonly place: readonly [number, number];
}[] = [
  {
    name: '16:9 on 35 mm',
    aspect: 16 / 9,
    gaugeMm: 35,
    focalMm: 50,
    vertical: 22.27533,
    horizontal: 38.58009,
    place: [0.571429, 0.507937],
  },
  {
    name: '3:2 on 36 mm',
    aspect: 1.5,
    gaugeMm: 36,
    focalMm: 50,
    vertical: 26.99147,
    horizontal: 39.59775,
    place: [0.555556, 0.416667],
  },
  {
    name: '4-perf',
    aspect: 24.89 / 18.66,
    gaugeMm: 24.89,
    focalMm: 35,
    vertical: 29.85265,
    horizontal: 39.14787,
    place: [0.562475, 0.375134],
  },
  {
    name: '16 mm film',
    aspect: 12.52 / 7.41,
    gaugeMm: 12.52,
    focalMm: 12,
    vertical: 34.31615,
    horizontal: 55.0991,
    place: [0.383387, 0.323887],
  },
  {
    name: 'upright, the gauge is the height',
    aspect: 9 / 16,
    gaugeMm: 24.89,
    focalMm: 35,
    vertical: 39.14787,
    horizontal: 22.62085,
    place: [0.999955, 0.281237],
  },
];

let rows = 0;

test.each(CAMERAS)("agrees with three's camera: $name", (row) => {
  rows += 1;
  const { aspect, gaugeMm, focalMm } = row;
  const three = new PerspectiveCamera(50, aspect, 0.1, 100);
  three.filmGauge = gaugeMm;
  three.setFocalLength(focalMm);
  three.updateProjectionMatrix();
  three.updateMatrixWorld(true);

  const gate = aspect >= 1 ? ([gaugeMm, gaugeMm / aspect] as const) : ([gaugeMm * aspect, gaugeMm] as const);
  const { tanHalfWidth, tanHalfHeight } = extraction(gate, focalMm, 1, aspect);
  const vertical = angleDegrees(tanHalfHeight);
  expect(Math.abs(vertical - row.vertical)).toBeLessThanOrEqual(CEILING_DEGREES);
  expect(Math.abs(angleDegrees(tanHalfWidth) - row.horizontal)).toBeLessThanOrEqual(CEILING_DEGREES);
  expect(vertical).toBeCloseTo(three.fov, 10);

  const camera = {
    pose: poseOf([0, 0, 0], 0, 0, 0),
    frame: { tanHalfWidth, tanHalfHeight, aspect, distortion: null },
  };
  const place = projectPoint(camera, [1, 0.5, -5]) ?? { x: Number.NaN, y: Number.NaN };
  const seen = [2 * place.x - 1, 1 - 2 * place.y];
  const live = new Vector3(1, 0.5, -5).project(three);
  expect(Math.abs(seen[0] - row.place[0])).toBeLessThanOrEqual(CEILING_PLACE);
  expect(Math.abs(seen[1] - row.place[1])).toBeLessThanOrEqual(CEILING_PLACE);
  expect(seen[0]).toBeCloseTo(live.x, 10);
  expect(seen[1]).toBeCloseTo(live.y, 10);
});

test('every row of the table was held against', () => {
  expect(rows).toBe(5);
});
