import type { ShapeBuilder } from '../../build/shapeBuilder';
import { add, scale, type Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addLathe } from '../rounds';
import { glowing, type Housing } from './types';

/** A bare bulb in its socket, the socket below: [width, height] are those of glass and socket together. */
export function bulbHousing(size: Vec3, colour: string | null): Housing {
  return {
    parts: [
      ownPart('socket', { substance: 'rubber' }, (builder) => addSocket(builder, [0, 0, 0], [0, 1, 0], size)),
    ],
    glow: [ownPart('bulb', glowing(colour), (builder) => addGlass(builder, [0, 0, 0], [0, 1, 0], size, 10))],
    faceMetres: 0,
    frontMetres: Math.min(size[0], size[1]) / 2,
    glowMetres: [size[0], glassMetres(size), size[0]],
  };
}

/** How much of the height is glass. */
export const glassMetres = ([width, height]: Vec3): number => Math.min(height * 0.72, width * 1.3);

/** The socket of a bulb whose glass has its middle at `at`; `along` points from the socket to the glass. */
export function addSocket(builder: ShapeBuilder, at: Vec3, along: Vec3, size: Vec3, sides = 8): void {
  const glass = glassMetres(size);
  const radius = size[0] * 0.24;
  const socket = Math.max(size[1] - glass, 0.01) + glass * 0.06;
  addLathe(
    builder,
    { at: add(at, scale(along, -glass * 0.44)), along },
    [
      [-socket, radius * 0.8],
      [0, radius],
    ],
    sides,
  );
}

/** The glass, its middle at `at`, narrower towards the socket. */
export function addGlass(builder: ShapeBuilder, at: Vec3, along: Vec3, size: Vec3, sides: number): void {
  const half = glassMetres(size) / 2;
  const radius = size[0] / 2;
  const isLean = sides < 8;
  addLathe(
    builder,
    { at, along },
    isLean
      ? [
          [-half, radius * 0.4],
          [0, radius],
          [half * 0.7, radius * 0.72],
          [half, 0],
        ]
      : [
          [-half, radius * 0.4],
          [-half * 0.55, radius * 0.72],
          [-half * 0.05, radius],
          [half * 0.5, radius * 0.86],
          [half * 0.87, radius * 0.5],
          [half, 0],
        ],
    sides,
  );
}
