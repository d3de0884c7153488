import { expect, test } from 'vitest';
import { snapSpot } from '../../../../src/core/plan/snap/snapSpot';
import type { SnapEdge, SnapPoint, SnapRequest, SnapThings } from '../../../../src/core/plan/snap/types';

const wall: SnapEdge = { from: [0, 0], to: [6, 0], name: 'the wall', word: 'along the wall', key: 'wall 0' };
const corner: SnapPoint = {
  at: [6, 0],
  kind: 'end',
  name: 'the wall',
  word: 'at the end of the wall',
  key: 'end wall 1',
};
type Asked = Partial<SnapRequest> & Pick<SnapRequest, 'at'> & Partial<SnapThings>;
const ask = ({ edges = [], points = [], ...request }: Asked) => {
  const { at, why } = snapSpot({ grid: null, reach: 0.3, around: () => ({ edges, points }), ...request });
  return { at: at.map((metres) => Math.round(metres * 1e6) / 1e6 + 0), words: why.map(({ word }) => word) };
};

test('with nothing near, the grid; without a grid, the hand itself', () => {
  expect(ask({ at: [1.234, -5.678], grid: 0.1 })).toEqual({ at: [1.2, -5.7], words: ['on the grid'] });
  expect(ask({ at: [1.234, -5.678] })).toEqual({ at: [1.234, -5.678], words: [] });
});

test('an edge holds the place on its line, by steps of the grid from its start', () => {
  expect(ask({ at: [2.52, 0.2], edges: [wall] })).toEqual({ at: [2.52, 0], words: ['along the wall'] });
  expect(ask({ at: [2.52, 0.2], edges: [wall], grid: 0.25 })).toEqual({
    at: [2.5, 0],
    words: ['along the wall', 'on the grid'],
  });
});

test('an end is sooner meant than the edge that it ends', () => {
  expect(ask({ at: [5.85, 0.1], edges: [wall], points: [corner] })).toEqual({
    at: [6, 0],
    words: ['at the end of the wall'],
  });
});

test('beyond its end an edge is something to be in line with', () => {
  const { at, words } = ask({ at: [9.1, 0.15], edges: [wall] });
  expect({ at, words }).toEqual({ at: [9.1, 0], words: ['in line with the wall'] });
  expect(ask({ at: [9.1, 0.15], edges: [wall], inLine: false }).words).toEqual([]);
});

test('drawn on from the end of the wall, the length goes by whole steps and the guide points on', () => {
  const { at, why } = snapSpot({
    at: [10.83, 0.12],
    from: [6, 0],
    grid: 0.1,
    reach: 0.3,
    around: () => ({ edges: [wall], points: [corner] }),
    square: [{ degrees: 0, name: 'the deck', loose: true }],
  });
  expect(at[0]).toBeCloseTo(10.8, 9);
  expect(at[1]).toBe(0);
  expect(why[0]).toMatchObject({
    kind: 'in line',
    word: 'in line with the wall',
    guide: [
      [6, 0],
      [10.8, 0],
    ],
  });
});

test('square to the leg before, and as long as it', () => {
  const asked = {
    at: [3.1, 2.05],
    from: [3, 0],
    square: [{ degrees: 90, name: 'the last leg' }],
    distances: [{ metres: 2, word: 'same length as the last leg' }],
  } as const;
  expect(ask(asked)).toEqual({
    at: [3, 2],
    words: ['square to the last leg', 'same length as the last leg'],
  });
});

test('in line with two things at once, where their lines cross', () => {
  const other: SnapPoint = { ...corner, at: [0, 4], name: 'the tank', key: 'middle tank', kind: 'middle' };
  expect(ask({ at: [6.05, 4.08], points: [corner, other] })).toEqual({
    at: [6, 4],
    words: ['in line with the wall', 'in line with the tank'],
  });
});

test('the same gap to the deck’s edge as another thing', () => {
  const rim: SnapEdge = { ...wall, name: 'the deck', word: 'on the deck’s edge', key: 'deck 0', rim: true };
  const gaps = [{ metres: 1.2, word: 'as far from the deck’s edge as lamp stand 2' }];
  expect(ask({ at: [3, 1.3], edges: [rim], gaps })).toEqual({ at: [3, 1.2], words: [gaps[0].word] });
});

test('straight keeps to steps of 15 degrees, and meets what lies across them', () => {
  const across: SnapEdge = { ...wall, from: [-5, -3], to: [5, -3] };
  const free = ask({ at: [0.1, -2], from: [0, 0], straight: true, grid: 0.5 });
  expect(free).toEqual({ at: [0, -2], words: ['held to 0°', 'on the grid'] });
  const met = ask({ at: [1.9, -2.9], from: [0, 0], straight: true, edges: [across] });
  // 33 degrees are held to 30: three metres up, and their tangent across.
  expect(met.at[1]).toBe(-3);
  expect(met.at[0]).toBeCloseTo(3 * Math.tan(Math.PI / 6), 6);
  expect(met.words).toEqual(['held to 30°', 'along the wall']);
});

test('what holds lets go later than it caught', () => {
  const at = [2, 0.35] as const;
  expect(ask({ at, edges: [wall] }).words).toEqual([]);
  expect(ask({ at, edges: [wall], held: ['edge wall 0'] }).words).toEqual(['along the wall']);
  expect(ask({ at: [2, 0.42], edges: [wall], held: ['edge wall 0'] }).words).toEqual([]);
});

test('the corner before is never meant again', () => {
  expect(ask({ at: [5.95, 0.05], from: [6, 0], points: [corner] }).at).not.toEqual([6, 0]);
});
