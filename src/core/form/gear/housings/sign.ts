import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addPipe } from '../rounds';
import { glowing, type Housing } from './types';

const TUBE_RADIUS = 0.007;

/** A shop sign: a cabinet whose front panel glows, with a glowing tube bent round it. */
export function signHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const half = depth / 2;
  const border = Math.min(0.06, width / 6, height / 6);
  const tube = Math.min(TUBE_RADIUS, border / 4, depth / 6);
  const front = half - 2 * tube;
  const back = ownPart('back', { substance: 'dark metal', smooth: false }, (builder) => {
    builder.box([0, 0, (half - front) / 2], [width, height, half + front]);
  });
  const glow = ownPart('face', glowing(colour), (builder) => {
    builder.box([0, 0, -front - tube * 0.2], [width - 2 * border, height - 2 * border, tube * 0.4]);
    const [x, y, z] = [width / 2 - border / 2, height / 2 - border / 2, -front - tube];
    addPipe(
      builder,
      [
        [0, -y, z],
        [x, -y, z],
        [x, y, z],
        [-x, y, z],
        [-x, -y, z],
        [0, -y, z],
      ],
      tube,
      6,
    );
  });
  return {
    parts: [back],
    glow: [glow],
    faceMetres: half,
    frontMetres: half,
    glowMetres: [width - border, height - border, 2 * tube],
  };
}
