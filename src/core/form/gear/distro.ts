import { standingAt } from '../build/placement';
import type { PlacedPart } from '../types';
import { addSocket, handleOver } from './caseParts';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';

const COLUMNS = 4;

/** A distribution box of hard rubber standing on `at`, its two rows of outlets towards the heading. */
export function distroParts(distro: GearOf<'distro'>): PlacedPart[] {
  const [width, height, depth] = distro.size;
  const outlet = Math.min(width / (COLUMNS * 2.6), height * 0.13);
  const body = ownPart('body', { substance: 'rubber', smooth: false }, (builder) => {
    builder.box([0, height * 0.43, 0], [width * 0.94, height * 0.78, depth * 0.9]);
    builder.box([0, height * 0.02, 0], [width, height * 0.04, depth * 0.96]);
    builder.box([0, height * 0.84, 0], [width, height * 0.04, depth * 0.96]);
  });
  const outlets = ownPart('outlets', { substance: 'dark metal' }, (builder) => {
    for (let k = 0; k < COLUMNS * 2; k += 1) {
      const x = (((k % COLUMNS) + 0.5) / COLUMNS - 0.5) * width * 0.86;
      const y = height * (k < COLUMNS ? 0.26 : 0.6);
      addSocket(builder, [x, y], depth, outlet);
    }
  });
  const tube = Math.min(0.01, height * 0.04);
  const handle = handleOver(width * 0.3, height * 0.86, height - tube, tube);
  return placeParts([body, outlets, handle], standingAt(distro.at, distro.headingDegrees));
}
