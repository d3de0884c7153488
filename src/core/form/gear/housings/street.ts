import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { glowing, type Housing } from './types';

/** A lantern is as long as this many of its widths, and as deep. Source: common practice, no source */
const LENGTH_IN_WIDTHS = 2.2;
const DEPTH_IN_WIDTHS = 0.45;

/** [width, length, depth] of the lantern of a street lamp whose class is as wide as this. */
export const lanternSize = (width: number): Vec3 => [
  width,
  width * LENGTH_IN_WIDTHS,
  width * DEPTH_IN_WIDTHS,
];

/**
 * The lantern of a street lamp, its light along −z. Of the class's [width, height, depth] only the width is its own;
 * the rest are those of the post and its arm.
 */
export function streetHousing([classWidth]: Vec3, colour: string | null): Housing {
  const [width, length, depth] = lanternSize(classWidth);
  const half = depth / 2;
  const lantern = ownPart('lantern', { substance: 'galvanised', smooth: false }, (builder) => {
    const rim = (z: number, share: number): Vec3[] => {
      const [x, y] = [(width / 2) * share, (length / 2) * share];
      return [
        [-x, -y, z],
        [x, -y, z],
        [x, y, z],
        [-x, y, z],
      ];
    };
    const [front, back] = [rim(-half * 0.9, 1), rim(half, 0.6)];
    builder.quad(back[0], back[1], back[2], back[3]);
    builder.quad(front[3], front[2], front[1], front[0]);
    for (let k = 0; k < 4; k += 1) {
      const next = (k + 1) % 4;
      builder.quad(front[k], front[next], back[next], back[k]);
    }
  });
  const face = ownPart('face', { ...glowing(colour), smooth: false }, (builder) => {
    builder.box([0, 0, -half * 0.95], [width * 0.8, length * 0.7, half * 0.1]);
  });
  return {
    parts: [lantern],
    glow: [face],
    faceMetres: half,
    frontMetres: half,
    glowMetres: [width * 0.8, length * 0.7, half * 0.1],
  };
}
