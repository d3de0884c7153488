import { beforeAll, expect, test } from 'vitest';
import { screenMotion } from '../../../src/core/continuity/screenDirectionAt';
import { radians } from '../../../src/core/form/build/vector';
import { poseOf } from '../../../src/core/optics/pose';
import { dice } from '../../plans/draw';
import { fromOpenCv, type Matrix } from '../optics/calibration';
import { openCvStands, projectPoints, rodrigues, rotationOf } from '../optics/openCv';

const CASES = 200;
const STEP_SECONDS = 1 / 1000;
const MATRIX: Matrix = { fx: 2000, fy: 2000, cx: 1024, cy: 512 };

const times = (a: readonly number[], b: readonly number[]): number[] =>
  a.map((_, k) => {
    const [row, column] = [Math.floor(k / 3) * 3, k % 3];
    return a[row] * b[column] + a[row + 1] * b[3 + column] + a[row + 2] * b[6 + column];
  });
const turned = (rows: readonly number[], p: readonly number[]): number[] =>
  [0, 3, 6].map((at) => rows[at] * p[0] + rows[at + 1] * p[1] + rows[at + 2] * p[2]);

beforeAll(openCvStands);

test(`${CASES} random walks go across the picture as OpenCV's projected points do`, () => {
  let compared = 0;
  for (let seed = 1; seed <= CASES; seed += 1) {
    const roll = dice(seed);
    const [heading, tilt, bank] = [roll(-360, 360), roll(-40, 40), roll(-180, 180)];
    const centre = [roll(-20, 20), roll(0.3, 6), roll(-20, 20)] as const;
    const pose = poseOf(centre, heading, tilt, bank);
    const rows = times(
      rodrigues([0, 0, -radians(bank)]),
      times(rodrigues([-radians(tilt), 0, 0]), rodrigues([0, -radians(heading), 0])),
    );
    const move = turned(rows, fromOpenCv(centre)).map((value) => -value);
    const depth = roll(1, 30);
    const [aside, above] = [roll(-0.5, 0.5) * depth, roll(-0.25, 0.25) * depth];
    const at = [0, 1, 2].map(
      (axis) => centre[axis] + pose.right[axis] * aside + pose.up[axis] * above + pose.forward[axis] * depth,
    );
    const [x, y, z] = at;
    const way = radians(roll(0, 360));
    const velocity = [1.3 * Math.sin(way), 0, -1.3 * Math.cos(way)] as const;
    const later = at.map((value, axis) => value + velocity[axis] * STEP_SECONDS);
    const pixels = projectPoints(
      [...fromOpenCv([x, y, z]), ...fromOpenCv([later[0], later[1], later[2]])],
      rotationOf(rows),
      move,
      MATRIX,
      [0, 0, 0, 0, 0],
    );
    const motion = screenMotion(pose, [x, y, z], velocity);
    // Pixels a second over the focal length, taken to the walker's depth.
    const expected = (((pixels[2] - pixels[0]) / MATRIX.fx) * depth) / STEP_SECONDS;
    expect(motion?.acrossMetresPerSecond, `seed ${seed}`).toBeCloseTo(expected, 2);
    if (motion?.direction === 'left to right' || motion?.direction === 'right to left') {
      expect(motion.direction, `seed ${seed}`).toBe(expected > 0 ? 'left to right' : 'right to left');
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThan(CASES / 2);
});
