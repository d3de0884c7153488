import { standingAt } from '../build/placement';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addLathe, addPipe } from './rounds';

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
      addLathe(
        builder,
        { at: [x, y, -depth * 0.45], along: [0, 0, -1] },
        [
          [0, outlet],
          [depth * 0.05, outlet * 0.9],
        ],
        8,
      );
    }
  });
  const handle = ownPart('handle', { substance: 'dark metal' }, (builder) => {
    const radius = Math.min(0.01, height * 0.04);
    const top = height - radius;
    addPipe(
      builder,
      [
        [-width * 0.3, height * 0.86, 0],
        [-width * 0.3, top, 0],
        [width * 0.3, top, 0],
        [width * 0.3, height * 0.86, 0],
      ],
      radius,
    );
  });
  return placeParts([body, outlets, handle], standingAt(distro.at, distro.headingDegrees));
}
