import { beforeAll, expect, test } from 'vitest';
import { radians } from '../../../src/core/form/build/vector';
import { poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';
import { dice } from '../../plans/draw';
import { cameraOf, fromOpenCv, inPixels, type Matrix } from './calibration';
import { openCvStands, projectPoints, rodrigues, rotationOf } from './openCv';

const POSES = 200;
const POINTS = 6;
/** Most that a pixel may differ, as a share of the picture's half width or of the pixel's own value. */
const CEILING_SHARE = 1e-6;

/** Rows of a after b. */
const times = (a: readonly number[], b: readonly number[]): number[] =>
  a.map((_, k) => {
    const [row, column] = [Math.floor(k / 3) * 3, k % 3];
    return a[row] * b[column] + a[row + 1] * b[3 + column] + a[row + 2] * b[6 + column];
  });

const turned = (rows: readonly number[], p: readonly number[]): number[] =>
  [0, 3, 6].map((at) => rows[at] * p[0] + rows[at + 1] * p[1] + rows[at + 2] * p[2]);

beforeAll(openCvStands);

test(`${POSES} random poses, lenses and points fall where OpenCV's Rodrigues and projectPoints put them`, () => {
  let largest = 0;
  let compared = 0;
  for (let seed = 1; seed <= POSES; seed += 1) {
    const roll = dice(seed);
    const [heading, tilt, bank] = [roll(-360, 360), roll(-80, 80), roll(-180, 180)];
    const centre = [roll(-50, 50), roll(-5, 20), roll(-50, 50)] as const;
    const matrix: Matrix = {
      fx: roll(800, 6000),
      fy: roll(800, 6000),
      cx: roll(480, 2048),
      cy: roll(270, 1080),
    };
    const lens = {
      k1: roll(-0.15, 0.15),
      k2: roll(-0.05, 0.05),
      k3: roll(-0.02, 0.02),
      p1: roll(-0.01, 0.01),
      p2: roll(-0.01, 0.01),
    };
    // World to camera in OpenCV's axes: the pan undone about the axis that points down, then the tilt, then the roll.
    const rows = times(
      rodrigues([0, 0, -radians(bank)]),
      times(rodrigues([-radians(tilt), 0, 0]), rodrigues([0, -radians(heading), 0])),
    );
    const move = turned(rows, fromOpenCv(centre)).map((value) => -value);
    const camera = cameraOf(matrix, poseOf(centre, heading, tilt, bank), lens);
    const back = [0, 1, 2].flatMap((row) => [rows[row], rows[row + 3], rows[row + 6]]);
    // Points in front of the camera, up to 0.78 off the axis as a tangent: within what every such lens can draw.
    const world = Array.from({ length: POINTS }, () => {
      const depth = roll(0.5, 60);
      const inCamera = [roll(-0.55, 0.55) * depth, roll(-0.55, 0.55) * depth, depth];
      const along = turned(back, inCamera);
      const at = fromOpenCv(centre);
      return [along[0] + at[0], along[1] + at[1], along[2] + at[2]] as const;
    });
    const expected = projectPoints(world.flat(), rotationOf(rows), move, matrix, [
      lens.k1,
      lens.k2,
      lens.p1,
      lens.p2,
      lens.k3,
    ]);
    world.forEach((point, k) => {
      const place = projectPoint(camera, fromOpenCv(point));
      if (!place) throw new Error(`seed ${seed}: nothing for ${point}`);
      inPixels(matrix, place).forEach((pixel, axis) => {
        const other = expected[2 * k + axis];
        const share = Math.abs(pixel - other) / Math.max(axis === 0 ? matrix.cx : matrix.cy, Math.abs(other));
        largest = Math.max(largest, share);
        expect(share, `seed ${seed}: ${pixel} against ${other}`).toBeLessThanOrEqual(CEILING_SHARE);
      });
      compared += 1;
    });
  }
  expect(compared).toBe(POSES * POINTS);
  console.log(
    `${compared} points against OpenCV 4.12: largest difference ${largest.toExponential(1)} as a share`,
  );
});
