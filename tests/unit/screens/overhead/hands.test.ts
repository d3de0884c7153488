import { describe, expect, test } from 'vitest';
import { EMPTY_PLAN } from '../../../../src/desk/emptyPlan';
import { type HitShape, hitAt } from '../../../../src/screens/overhead/geometry/hits';
import { nearestEdge } from '../../../../src/screens/overhead/geometry/roof';
import { markNames, nameInText } from '../../../../src/screens/overhead/words';

const square = (target: string, x: number, y: number, half: number): HitShape<string> => ({
  target,
  outline: [
    [x - half, y - half],
    [x + half, y - half],
    [x + half, y + half],
    [x - half, y + half],
  ],
  closed: true,
  thin: false,
});

describe('what a press hits', () => {
  const shed = square('shed', 100, 100, 60);
  const stand: HitShape<string> = { target: 'stand', outline: [[120, 120]], closed: false, thin: false };
  const cable: HitShape<string> = {
    target: 'cable',
    outline: [
      [0, 200],
      [300, 200],
    ],
    closed: false,
    thin: true,
  };

  test('a point has an area of at least 32 pixels around it, 48 for a finger', () => {
    expect(hitAt([stand], [135.9, 120], 16)?.target).toBe('stand');
    expect(hitAt([stand], [137, 120], 16)).toBeNull();
    expect(hitAt([stand], [143.9, 120], 24)?.target).toBe('stand');
  });

  test('a small thing upon a large one goes first, whatever the order of drawing', () => {
    expect(hitAt([shed, stand], [125, 120], 16)?.target).toBe('stand');
    expect(hitAt([stand, shed], [125, 120], 16)?.target).toBe('stand');
    expect(hitAt([shed, stand], [60, 60], 16)?.target).toBe('shed');
  });

  test('a cable is hit from near by only, and never before what stands on it', () => {
    expect(hitAt([cable], [150, 204], 16)?.target).toBe('cable');
    expect(hitAt([cable], [150, 208], 16)).toBeNull();
    const box: HitShape<string> = { ...stand, target: 'box', outline: [[150, 203]] };
    expect(hitAt([box, cable], [150, 200], 16)?.target).toBe('box');
  });
});

test('the nearest edge is the inner face of a parapet', () => {
  const plan = {
    ...EMPTY_PLAN,
    pieces: [
      {
        kind: 'parapet' as const,
        id: 'p',
        label: 'Parapet',
        path: [
          [0, 0],
          [10, 0],
          [10, 10],
          [0, 10],
        ] as [number, number][],
        closed: true,
        baseMetres: 0,
        heightMetres: 0.95,
        thicknessMetres: 0.3,
        copingMetres: 0.06,
        material: 'brick' as const,
      },
    ],
  };
  const edge = nearestEdge(plan, [2, 5]);
  expect(edge?.metres).toBeCloseTo(1.85, 10);
  expect(edge?.at[0]).toBeCloseTo(0.15, 10);
  expect(nearestEdge(EMPTY_PLAN, [0, 0])).toBeNull();
});

test('names in a drawing begin small, short names of marks are joined', () => {
  expect(nameInText('Lamp stand 2')).toBe('lamp stand 2');
  expect(nameInText('HMI 2')).toBe('HMI 2');
  expect(markNames('Vera', [2, 3])).toBe('V3, 4');
});
