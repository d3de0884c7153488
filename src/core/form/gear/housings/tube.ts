import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addRod } from '../rounds';
import { glowing, type Housing } from './types';

/** A lamp as long as it is wide and as thick as it is high: a glowing tube between two caps, on a spine. */
export function tubeHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const radius = Math.min(height, depth) / 2;
  const half = width / 2;
  const cap = Math.min(0.04, width * 0.08);
  const housing = ownPart('housing', { substance: 'dark metal' }, (builder) => {
    addRod(builder, [-half, 0, 0], [-half + cap, 0, 0], radius);
    addRod(builder, [half - cap, 0, 0], [half, 0, 0], radius);
    builder.box([0, 0, radius * 0.8], [width, radius * 0.9, radius * 0.4]);
  });
  const face = ownPart('face', glowing(colour), (builder) => {
    addRod(builder, [-half + cap, 0, 0], [half - cap, 0, 0], radius * 0.9, 10);
  });
  return {
    parts: [housing],
    glow: [face],
    faceMetres: radius * 0.9,
    frontMetres: radius,
    glowMetres: [width - 2 * cap, radius * 1.8, radius * 1.8],
  };
}
