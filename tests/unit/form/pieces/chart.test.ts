import { expect, test } from 'vitest';
import { pieceParts } from '../../../../src/core/form/pieces';
import type { PartShape } from '../../../../src/core/form/types';
import type { Piece } from '../../../../src/core/plan/schema/pieces';
import { boundsOf, partNamed } from '../solids';

type Chart = Extract<Piece, { kind: 'chart' }>;

const CHART: Chart = {
  id: 'chart',
  label: 'Chart',
  kind: 'chart',
  at: [0, 0, 0],
  headingDegrees: 0,
  widthMetres: 1.1,
  heightMetres: 0.8,
  middleMetres: 1.5,
  tiltDegrees: 0,
  face: { kind: 'squares', columns: 10, rows: 7 },
};
const GROUND = { surface: 'concrete', wetness: 'dry' } as const;

const partsOf = (change: Partial<Chart> = {}) => pieceParts({ ...CHART, ...change }, GROUND);
const boundsIn = (change: Partial<Chart>, name: string) =>
  boundsOf(partsOf(change).filter((part) => part.name === name));

/** Corners of a shape that lie in the face's plane, which stands at z = 0 and looks along −z. */
function faceCorners({ positions }: PartShape): string[] {
  const corners = new Set<string>();
  for (let k = 0; k < positions.length; k += 3)
    if (Math.abs(positions[k + 2]) < 1e-7)
      corners.add([positions[k], positions[k + 1]].map((metres) => metres.toFixed(4)).join(' '));
  return [...corners];
}

test('squares are 0.1 m on a board of 1.1 by 0.8 m with ten by seven of them, black at the upper left', () => {
  const { low, high } = boundsIn({}, 'black');
  // Seen from its front, left is +x.
  [0.5, 1.85, -0.5, 1.15].forEach((metres, k) => {
    expect([high[0], high[1], low[0], low[1]][k]).toBeCloseTo(metres, 5);
  });
  const black = faceCorners(partNamed(partsOf(), 'black'));
  expect(black).toContain('0.5000 1.8500');
  expect(black).not.toContain('-0.5000 1.8500');
  // 35 of 70 squares, and white all that is left of 12 by 9 cells.
  expect(partNamed(partsOf(), 'black').indices.length / 3).toBe(35 * 2);
  expect(partNamed(partsOf(), 'white').indices.length / 3).toBe((12 * 9 - 35) * 2);
  const white = boundsIn({}, 'white');
  expect(white.size[0]).toBeCloseTo(1.1, 5);
  expect(white.size[1]).toBeCloseTo(0.8, 5);
});

test('black and white meet at the same corners of one plane', () => {
  const white = new Set(faceCorners(partNamed(partsOf(), 'white')));
  const black = faceCorners(partNamed(partsOf(), 'black'));
  expect(black.filter((corner) => !white.has(corner))).toEqual([]);
});

test('a board leans back about its middle where it is tilted up, and its pole stays behind it', () => {
  for (const tiltDegrees of [-90, -50, 0, 50, 90]) {
    const { low, high } = boundsIn({ tiltDegrees }, 'white');
    expect((low[1] + high[1]) / 2).toBeCloseTo(1.5, 1);
    const pole = boundsIn({ tiltDegrees }, 'pole');
    expect(pole.low[1]).toBeCloseTo(0, 5);
    const { positions } = partNamed(partsOf({ tiltDegrees }), 'pole');
    const [sine, cosine] = [Math.sin((tiltDegrees * Math.PI) / 180), Math.cos((tiltDegrees * Math.PI) / 180)];
    for (let k = 0; k < positions.length; k += 3) {
      const [y, z] = [positions[k + 1] - 1.5, positions[k + 2]];
      const [up, before] = [y * cosine + z * sine, y * sine - z * cosine];
      // Behind the board all the way down to the plate, which may reach below it.
      if (y > -1.4 && Math.abs(up) < 0.4) expect(before).toBeLessThan(-0.0099);
    }
  }
  const up = boundsIn({ tiltDegrees: 30 }, 'white');
  expect(up.high[2]).toBeGreaterThan(0.2);
  expect(up.low[2]).toBeLessThan(-0.19);
});

/** Linear light of a code value of sRGB. Source: IEC 61966-2-1, from memory */
const linear = (code: number): number =>
  code / 255 <= 0.04045 ? code / 255 / 12.92 : ((code / 255 + 0.055) / 1.055) ** 2.4;

test('reflectances are 4 %, 85 % and 18 % as near as code values come', () => {
  const found = (parts: ReturnType<typeof partsOf>, name: string) =>
    linear(Number.parseInt((partNamed(parts, name).colour ?? '').slice(1, 3), 16));
  expect(found(partsOf(), 'black')).toBeCloseTo(0.04, 3);
  expect(Math.abs(found(partsOf(), 'white') - 0.85)).toBeLessThan(0.004);
  expect(Math.abs(found(partsOf({ face: { kind: 'grey card' } }), 'card') - 0.18)).toBeLessThan(0.002);
});
