import { describe, expect, test } from 'vitest';
import type { HeightLimits } from '../../../../../src/core/clearance/ground/heightLimit';
import { ROLE_RANGES } from '../../../../../src/core/clearance/useful/roles';
import type { UsefulGround } from '../../../../../src/core/clearance/useful/types';
import { limitFigure } from '../../../../../src/screens/overhead/clearGround/GroundReading';
import { limitSquares, unlimited } from '../../../../../src/screens/overhead/clearGround/limits';
import { sharing, signPaths, usefulPaths } from '../../../../../src/screens/overhead/clearGround/marks';

const squares = {
  stepMetres: 0.25,
  corner: [0, 0] as [number, number],
  columns: 4,
  rows: 2,
  deckMetres: new Float64Array(8),
};
const strokes = (path: string): number => path.split('M').length - 1;

describe('signs', () => {
  test('each state but showing has its own, one for each square where there is room', () => {
    const paths = signPaths(squares, [1, 1, 2, 3, 4, 5, 0, 1], 40);
    expect(paths.clear).toBe('M0.125 0.125h0M0.375 0.125h0M0.875 0.375h0');
    expect(strokes(paths.close)).toBe(1);
    expect(strokes(paths.covered)).toBe(1);
    expect(strokes(paths.mirrored)).toBe(2);
    expect(new Set(Object.values(paths)).size).toBe(4);
  });

  test('where squares lie too near to one another the worst of them speaks', () => {
    expect(sharing(0.25, 40)).toBe(1);
    expect(sharing(0.25, 13)).toBe(2);
    const paths = signPaths(squares, [1, 1, 1, 1, 1, 5, 1, 2], 13);
    expect(paths.clear).toBe('');
    expect(strokes(paths.close)).toBe(1);
    expect(paths.close).toMatch(/^M0\.750 0\.104v/);
  });
});

const useful: UsefulGround = {
  ...squares,
  question: {
    lampId: 'a',
    performerId: 'b',
    setupId: 'c',
    seconds: 0,
    role: 'key',
    range: ROLE_RANGES.key,
    side: 'either',
    stops: 0,
    toleranceStops: 1,
    mayDim: true,
    clearOf: ['c'],
  },
  aim: [0, 0, 0],
  foot: [0, 0],
  setsDim: true,
  states: Uint8Array.of(0, 7, 7, 0, 0, 0, 0, 0),
  dims: new Float64Array(8),
  stops: new Float64Array(8),
};

test('useful ground has an edge around it and none inside, and denser points than clear ground', () => {
  const { edge, points } = usefulPaths(useful, 40);
  // Two squares beside one another: two upper sides, two lower, one at each end.
  expect(strokes(edge)).toBe(6);
  expect(strokes(points)).toBeGreaterThan(
    2 * strokes(signPaths(squares, [0, 1, 1, 0, 0, 0, 0, 0], 40).clear),
  );
});

describe('limits', () => {
  const limits: HeightLimits = {
    ...squares,
    setupIds: ['c'],
    limitMetres: Float64Array.of(0, 1.23, 2.19, Infinity, Number.NaN, 3, 0.04, 6),
  };

  test('are said downwards, so that what is said holds', () => {
    const at = (column: number, row = 0): string | null =>
      limitFigure(limits, [column * 0.25 + 0.1, row * 0.25 + 0.1], 'm');
    expect(at(0)).toBe('no stand stays clear');
    expect(at(1)).toBe('up to 1.2\u00a0m stays clear');
    expect(at(2)).toBe('up to 2.1\u00a0m stays clear');
    expect(at(3)).toBe('any height stays clear');
    expect(at(0, 1)).toBeNull();
    expect(at(2, 1)).toBe('no stand stays clear');
    expect(limitFigure(limits, [-1, 0], 'm')).toBeNull();
  });

  test('are said downwards in feet and inches too, to a quarter inch', () => {
    const at = (column: number, row = 0): string | null =>
      limitFigure(limits, [column * 0.25 + 0.1, row * 0.25 + 0.1], 'ft-in');
    // 1.23 m are 48.425 in and 2.19 m 86.22 in; rounded, the first would be 48½.
    expect(at(1)).toBe('up to 4′\u00a0¼″ stays clear');
    expect(at(2)).toBe('up to 7′\u00a02″ stays clear');
    expect(at(2, 1)).toBe('up to 1½″ stays clear');
  });

  test('lines run through heights only, points mark where none is needed', () => {
    expect([...limitSquares(limits).stops]).toEqual([
      Number.NaN,
      1.23,
      2.19,
      Number.NaN,
      Number.NaN,
      3,
      0.04,
      6,
    ]);
    expect([...unlimited(limits)]).toEqual([5, 5, 5, 1, 0, 5, 5, 5]);
  });
});
