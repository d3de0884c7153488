import { expect, test } from 'vitest';
import { levelGrid } from '../../../src/core/light/levelGrid';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';

const deck: Plan['pieces'][number] = {
  id: 'deck',
  label: 'Deck',
  kind: 'deck',
  outline: [
    [-4, -4],
    [4, -4],
    [4, 4],
    [0, 4],
    [0, 0],
    [-4, 0],
  ],
  topMetres: 0,
  dropMetres: 2,
};

/** Lux at a spot of a map. */
function at(grid: NonNullable<ReturnType<typeof levelGrid>>, x: number, z: number): number {
  const column = Math.floor((x - grid.corner[0]) / grid.stepMetres);
  const row = Math.floor((z - grid.corner[1]) / grid.stepMetres);
  return grid.lux[row * grid.columns + column];
}

const gridOf = (plan: Plan, of: 'turned to the lamp' | 'level', stepMetres = 0.5) => {
  const grid = levelGrid(plan, null, 0, { heightMetres: 1, stepMetres, of });
  if (!grid) throw new Error('no map');
  return grid;
};

test('a map has the light of a lamp by the square of the distance, and nothing where there is no deck', () => {
  const plan = darkRoof({ pieces: [deck], gear: [lampAt('lamp', 'bulb', [2.25, 5, -1.75], [0, -1, 0])] });
  const turned = gridOf(plan, 'turned to the lamp');
  expect([turned.columns, turned.rows, turned.corner]).toEqual([16, 16, [-4, -4]]);
  const under = at(turned, 2.3, -1.7);
  // 3 m farther to the side: the way is 5 m instead of 4, and level ground has the cosine of it besides.
  const ambient = at(gridOf(darkRoof({ pieces: [deck] }), 'level'), 2.3, -1.7);
  const aside = at(turned, -0.7, -1.7);
  expect((under - ambient) / (aside - ambient)).toBeCloseTo(25 / 16, 1);
  const level = gridOf(plan, 'level');
  expect((at(level, -0.7, -1.7) - ambient) / (under - ambient)).toBeCloseTo((16 / 25) * (4 / 5), 1);
  expect(at(turned, -3, 3)).toBeNaN();
});

test('a flag throws its shadow on the map', () => {
  const lamp = lampAt('lamp', 'bulb', [2.25, 5, -1.75], [0, -1, 0]);
  const open = gridOf(darkRoof({ pieces: [deck], gear: [lamp] }), 'level');
  const plan = darkRoof({ pieces: [deck], gear: [lamp, flagAt('flag', [2.25, 3, -1.75], [1.5, 1.5])] });
  expect(at(gridOf(plan, 'level'), 2.3, -1.7)).toBeLessThan(at(open, 2.3, -1.7) / 5);
  expect(at(gridOf(plan, 'level'), -3, -1.7)).toBe(at(open, -3, -1.7));
});

test('a plan without a deck has no map, and a roof as large as a town is taken in larger squares', () => {
  expect(
    levelGrid(darkRoof({ pieces: [] }), null, 0, { heightMetres: 1, stepMetres: 1, of: 'level' }),
  ).toBeNull();
  const town: Plan['pieces'][number] = {
    ...deck,
    outline: [
      [-400, -400],
      [400, -400],
      [400, 400],
    ],
  };
  expect(gridOf(darkRoof({ pieces: [town] }), 'level', 0.25).stepMetres).toBe(4);
});
