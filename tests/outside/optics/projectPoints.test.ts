import { afterAll, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { undistort } from '../../../src/core/optics/distortion';
import { projectPoint } from '../../../src/core/optics/project';
import type { Distortion } from '../../../src/core/plan/schema/kit';
import { cameraOf, fromOpenCv, inPixels, type Matrix, poseFrom, STRAIGHT } from './calibration';

/** Most that a pixel may differ from the tables. */
const CEILING_PIXELS = 1e-3;
const CEILING_UNDISTORTED_PIXELS = 0.01;

type Pixel = readonly [number, number];

const LARGE: Matrix = { fx: 5000, fy: 5000, cx: 2048, cy: 1080 };
const SMALL: Matrix = { fx: 1920, fy: 1920, cx: 960, cy: 540 };
const BARREL: Distortion = { ...STRAIGHT, k1: -0.1, k2: 0.02 };
const CUSHION: Distortion = { ...STRAIGHT, k1: 0.05, k2: -0.01 };

const AT_ORIGIN = poseFrom([1, 0, 0, 0, 1, 0, 0, 0, 1], [0, 0, 0]);

/** The matrix of a rotation vector, by the formula of Rodrigues, from memory. */
function turnOf([x, y, z]: Vec3): number[] {
  const angle = Math.hypot(x, y, z);
  const axis = [x / angle, y / angle, z / angle];
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const across = [0, -axis[2], axis[1], axis[2], 0, -axis[0], -axis[1], axis[0], 0];
  return across.map((value, k) => {
    const [row, column] = [Math.floor(k / 3), k % 3];
    return (row === column ? cos : 0) + (1 - cos) * axis[row] * axis[column] + sin * value;
  });
}

/** cv2.projectPoints of OpenCV 4.6.0 for Python. Points in OpenCV's coordinates, metres; pixels. */
const PROJECTED: readonly {
  readonly name: string;
  readonly matrix: Matrix;
  readonly distortion: Distortion | null;
  readonly pose?: { readonly rvec: Vec3; readonly tvec: Vec3 };
  readonly pairs: readonly (readonly [Vec3, Pixel])[];
}[] = [
  {
    name: 'no distortion',
    matrix: LARGE,
    distortion: null,
    pairs: [
      [
        [1, -0.5, 5],
        [3048, 580],
      ],
      [
        [-2, 1, 5],
        [48, 2080],
      ],
      [
        [1.5, 1.2, 8],
        [2985.5, 1830],
      ],
    ],
  },
  {
    name: 'k1 −0.1, k2 0.02 (the same from the npm package 4.12.0-release.1)',
    matrix: LARGE,
    distortion: BARREL,
    pairs: [
      [
        [1, 0, 5],
        [3044.032, 1080],
      ],
      [
        [1, -0.5, 5],
        [3043.05, 582.475],
      ],
      [
        [-2, 1, 5],
        [86.4, 2060.8],
      ],
      [
        [1.5, 1.2, 8],
        [2980.1571, 1825.7256],
      ],
      [
        [-0.4, -1.7, 3],
        [1402.3947, -1663.8227],
      ],
    ],
  },
  {
    name: 'k1 0.05, k2 −0.01',
    matrix: SMALL,
    distortion: CUSHION,
    pairs: [
      [
        [1, 0, 5],
        [1344.7619, 540],
      ],
      [
        [-2, 1, 5],
        [184.6272, 927.6864],
      ],
      [
        [1.5, 1.2, 8],
        [1321.0258, 828.8207],
      ],
    ],
  },
  {
    name: 'a camera turned to the side',
    matrix: LARGE,
    distortion: null,
    pose: { rvec: [0, -0.3, 0], tvec: [0.5, 1.2, 4] },
    pairs: [
      [
        [0, 0, 5],
        [1491.0692, 1763.6296],
      ],
      [
        [1, -0.5, 5],
        [2035.7293, 1465.7939],
      ],
    ],
  },
  {
    name: 'a camera tilted and rolled',
    matrix: LARGE,
    distortion: null,
    pose: { rvec: [-0.35, 0, 0.05], tvec: [0.2, -0.6, 6] },
    pairs: [
      [
        [0, 0, 5],
        [2121.2471, 1600.6023],
      ],
      [
        [1.5, 1.2, 8],
        [2647.7013, 2356.1856],
      ],
    ],
  },
];

let rows = 0;
let points = 0;
let largest = 0;

test.each(PROJECTED)('projects as OpenCV 4.6.0 does: $name', ({ matrix, distortion, pose, pairs }) => {
  rows += 1;
  const camera = cameraOf(matrix, pose ? poseFrom(turnOf(pose.rvec), pose.tvec) : AT_ORIGIN, distortion);
  for (const [point, pixel] of pairs) {
    points += 1;
    const place = projectPoint(camera, fromOpenCv(point));
    if (!place) throw new Error(`projectPoint gave nothing for ${point}`);
    const found = inPixels(matrix, place);
    const away = Math.max(Math.abs(found[0] - pixel[0]), Math.abs(found[1] - pixel[1]));
    largest = Math.max(largest, away);
    expect(away, `${point} at ${found}, expected ${pixel}`).toBeLessThanOrEqual(CEILING_PIXELS);
  }
});

test('undoes distortion as cv2.undistortPoints of OpenCV 4.6.0 does', () => {
  rows += 1;
  points += 1;
  const { fx, fy, cx, cy } = LARGE;
  const straight = undistort(BARREL, (3048 - cx) / fx, (580 - cy) / fy) ?? [Number.NaN, Number.NaN];
  expect(Math.abs(straight[0] * fx + cx - 3053.0245)).toBeLessThanOrEqual(CEILING_UNDISTORTED_PIXELS);
  expect(Math.abs(straight[1] * fy + cy - 577.4878)).toBeLessThanOrEqual(CEILING_UNDISTORTED_PIXELS);
});

test('every row and every point of the tables was held against', () => {
  expect([rows, points]).toEqual([6, 16]);
});

afterAll(() => console.log(`pixels against OpenCV 4.6.0: largest difference ${largest.toExponential(1)}`));
