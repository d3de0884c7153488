import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { glowing, type Housing } from './types';

const RIBS = 4;
const BEZEL = 0.012;

/** A flat lamp: a shallow box with ribs behind and a face that glows all over. */
export function panelHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const half = depth / 2;
  const bezel = Math.min(BEZEL, width / 8, height / 8);
  const housing = ownPart('housing', { substance: 'dark metal', smooth: false }, (builder) => {
    builder.box([0, 0, -half * 0.1], [width, height, depth * 0.82]);
    for (let rib = 0; rib < RIBS; rib += 1) {
      const y = height * (0.36 - (0.72 * rib) / (RIBS - 1));
      builder.box([0, y, half * 0.85], [width * 0.8, height * 0.05, half * 0.3]);
    }
  });
  const [faceWidth, faceHeight] = [width - 2 * bezel, height - 2 * bezel];
  const face = ownPart('face', { ...glowing(colour), smooth: false }, (builder) => {
    builder.box([0, 0, -half * 0.955], [faceWidth, faceHeight, half * 0.09]);
  });
  return {
    parts: [housing],
    glow: [face],
    faceMetres: half,
    frontMetres: half,
    glowMetres: [faceWidth, faceHeight, half * 0.09],
  };
}
