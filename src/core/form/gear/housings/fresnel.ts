import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addLathe } from '../rounds';
import { FORWARD, glowing, type Housing } from './types';

const RIBS = 5;

/** A lamp in a box with a ribbed roof and a stepped lens in a round bezel. */
export function fresnelHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const half = depth / 2;
  const bezel = Math.min(width, height) / 2;
  const axis = { at: [0, 0, 0], along: FORWARD } as const;
  const boxDepth = depth * 0.82;
  const boxMiddle = half - boxDepth / 2;
  const boxHeight = height * 0.86;
  const housing = ownPart('housing', { substance: 'dark metal' }, (builder) => {
    builder.box([0, -height * 0.03, boxMiddle], [width * 0.9, boxHeight, boxDepth]);
    for (let rib = 0; rib < RIBS; rib += 1) {
      const z = boxMiddle + boxDepth * (0.4 - (0.8 * rib) / (RIBS - 1));
      builder.box([0, height * 0.45, z], [width * 0.8, height * 0.1, boxDepth * 0.08]);
    }
    addLathe(builder, axis, [
      [half * 0.55, bezel],
      [half, bezel],
      [half, bezel * 0.9],
      [half * 0.8, bezel * 0.88],
    ]);
  });
  const edge = half * 0.84;
  const lens = ownPart('lens', glowing(colour), (builder) => {
    addLathe(builder, axis, [
      [half * 0.78, bezel * 0.86],
      [edge, bezel * 0.86],
      [edge + (half - edge) * 0.6, bezel * 0.55],
      [half * 0.98, 0],
    ]);
  });
  return {
    parts: [housing],
    glow: [lens],
    faceMetres: half * 0.98,
    frontMetres: half,
    glowMetres: [bezel * 1.72, bezel * 1.72, half * 0.2],
  };
}
