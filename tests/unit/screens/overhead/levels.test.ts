import { expect, test } from 'vitest';
import { bandOf, bandPaths, STOPS, squaresOf } from '../../../../src/screens/overhead/levels/bands';
import { contourLabels, contoursOf } from '../../../../src/screens/overhead/levels/contours';

/** A map whose stops fall evenly away from its middle, a metre a square. */
function cone(size: number) {
  const middle = size / 2;
  const stops = Float64Array.from({ length: size * size }, (_, k) => {
    const [x, y] = [(k % size) + 0.5, Math.floor(k / size) + 0.5];
    return 3 - Math.hypot(x - middle, y - middle) / 2;
  });
  return { corner: [0, 0], step: [1, 1], columns: size, rows: size, stops } as const;
}

test('each step of the palette is the nearest whole stop, the ends take all that lies beyond', () => {
  expect(STOPS.map((stop) => bandOf(stop))).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
  expect([bandOf(-9), bandOf(-0.4), bandOf(0.6), bandOf(8)]).toEqual([0, 4, 5, 7]);
});

test('a map in lux is in stops from what is asked, and what has no deck is nothing', () => {
  const squares = squaresOf(
    {
      corner: [-1, 2],
      stepMetres: 0.5,
      columns: 3,
      rows: 1,
      lux: Float64Array.of(100, 50, Number.NaN),
      heightMetres: 1,
      of: 'level',
    },
    100,
  );
  expect(Array.from(squares.stops)).toEqual([0, -1, Number.NaN]);
  const paths = bandPaths(squares);
  expect(paths[4]).toBe('M-1 2h0.5v0.5h-0.5z');
  expect(paths[3]).toBe('M-0.5 2h0.5v0.5h-0.5z');
  expect(paths.filter((path) => path !== '')).toHaveLength(2);
});

test('the squares of all steps cover the map once', () => {
  const paths = bandPaths(cone(20));
  const area = [...paths.join('').matchAll(/h([\d.]+)v([\d.]+)/g)].reduce(
    (sum, [, wide, high]) => sum + Number(wide) * Number(high),
    0,
  );
  expect(area).toBeCloseTo(400, 6);
});

test('a line lies where the map has its level, runs on in one and comes back to its beginning', () => {
  const [ring, ...others] = contoursOf(cone(24), [1]);
  expect(others).toHaveLength(0);
  expect(ring.closed).toBe(true);
  for (const [x, y] of ring.places) expect(Math.hypot(x - 12, y - 12)).toBeCloseTo(4, 1);
});

test('lines that leave the map are open, and lettering keeps apart', () => {
  const contours = contoursOf(cone(24), [-3, -2, 0, 1]);
  expect(contours.filter(({ closed }) => !closed).every(({ stop }) => stop < -1)).toBe(true);
  const labels = contourLabels(contours, 3, 2);
  expect(labels.map(({ stop }) => stop)).toContain(0);
  labels.forEach(({ at: [x, y] }, k) => {
    for (const { at } of labels.slice(0, k))
      expect(Math.hypot(at[0] - x, at[1] - y)).toBeGreaterThanOrEqual(2);
  });
  // Where something with a name stands, the letters go elsewhere along their line, or are left out.
  const [{ at: middle }] = labels;
  for (const { at } of contourLabels(contours, 3, 2, [middle]))
    expect(Math.hypot(at[0] - middle[0], at[1] - middle[1])).toBeGreaterThanOrEqual(2);
});
