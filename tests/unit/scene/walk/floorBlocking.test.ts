import { expect, test } from 'vitest';
import { pairLines, tapeMarks, walkLines } from '../../../../src/scene/walk/floorBlocking';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);

test('marks lie on the floor as tape of 0.05 m in a T of 0.30 m: four triangles each, facing up or down', () => {
  const points = tapeMarks(demo).getAttribute('position');
  expect(points.count).toBe(demo.cast.flatMap(({ marks }) => marks).length * 12);
  let area = 0;
  for (let k = 0; k < points.count; k += 3) {
    const [ax, az] = [points.getX(k), points.getZ(k)];
    const [bx, bz] = [points.getX(k + 1) - ax, points.getZ(k + 1) - az];
    const [cx, cz] = [points.getX(k + 2) - ax, points.getZ(k + 2) - az];
    area += Math.abs(bx * cz - bz * cx) / 2;
  }
  // A bar of 0.30 by 0.05 and a stem of 0.25 by 0.05.
  expect(area / (points.count / 12)).toBeCloseTo(0.0275, 5);
});

test('walks are dashed, and the line runs 5 m past both', () => {
  expect(walkLines(demo).getAttribute('position').count).toBeGreaterThan(100);
  expect(walkLines({ ...demo, cast: [] }).getAttribute('position')).toBeUndefined();
  // At the face-off the two stand 0.84 m apart on the x axis.
  const line = pairLines(demo, [['nuno', 'vera']], 18);
  const xs = line.filter((_, k) => k % 3 === 0);
  expect(Math.max(...xs)).toBeCloseTo(0.42 + 5, 6);
  expect(Math.min(...xs)).toBeLessThan(-0.42 - 4.8);
});
