import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addLathe } from '../rounds';
import { FORWARD, glowing, type Housing } from './types';

const FINS = 4;

/** A round lamp with cooling fins behind and a flaring reflector in front. */
export function spotHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const rim = Math.min(width, height) / 2;
  const half = depth / 2;
  const axis = { at: [0, 0, 0], along: FORWARD } as const;
  const wall = Math.min(0.006, rim / 8);
  const housing = ownPart('housing', { substance: 'dark metal' }, (builder) => {
    addLathe(builder, axis, [
      [-half, rim * 0.6],
      [-half * 0.9, rim * 0.7],
      [-half * 0.2, rim * 0.7],
      [-half * 0.2, rim * 0.5],
      [0, rim * 0.5],
      [half * 0.94, rim],
      [half, rim],
      [half, rim - wall],
      [half * 0.1, rim * 0.42],
    ]);
    for (let fin = 0; fin < FINS; fin += 1) {
      const along = -half * (0.8 - (0.5 * fin) / (FINS - 1));
      addLathe(
        builder,
        axis,
        [
          [along - half * 0.03, rim * 0.86],
          [along + half * 0.03, rim * 0.86],
        ],
        10,
      );
    }
  });
  const face = half * 0.88;
  const lens = ownPart('lens', glowing(colour), (builder) => {
    addLathe(builder, axis, [
      [face - 0.006, rim * 0.84],
      [face, rim * 0.84],
    ]);
  });
  return {
    parts: [housing],
    glow: [lens],
    faceMetres: face,
    frontMetres: half,
    glowMetres: [rim * 1.68, rim * 1.68, 0.006],
  };
}
