import { standingAt } from '../build/placement';
import { mix, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addRod } from './rounds';

/** A step ladder's proportions. Source: common practice, no source */
const SPREAD_SHARE = 0.55;
const STILE_RADIUS = 0.018;
const RUNG_GAP = 0.28;
const MOST_TREADS = 16;

/** A step ladder, `at` the middle of its footprint, its treads towards the heading. */
export function ladderParts(ladder: GearOf<'ladder'>): PlacedPart[] {
  const height = ladder.heightMetres;
  const half = (height * SPREAD_SHARE) / 2;
  const [narrow, wide] = [Math.min(0.17, height * 0.2), Math.min(0.17, height * 0.2) + height * 0.05];
  const front = (side: number): readonly [Vec3, Vec3] => [
    [side * wide, 0, -half],
    [side * narrow, height * 0.98, -half * 0.1],
  ];
  const rear = (side: number): readonly [Vec3, Vec3] => [
    [side * wide, 0, half],
    [side * narrow, height * 0.98, half * 0.1],
  ];
  const radius = Math.min(STILE_RADIUS, height / 30);
  const treads = Math.min(Math.max(Math.round(height / RUNG_GAP) - 1, 1), MOST_TREADS);
  const stiles = ownPart('stiles', { substance: 'metal' }, (builder) => {
    for (const side of [-1, 1]) {
      for (const [foot, head] of [front(side), rear(side)]) addRod(builder, foot, head, radius);
    }
    for (const share of [0.2, 0.6]) {
      addRod(builder, mix(...rear(-1), share), mix(...rear(1), share), radius * 0.7, 6);
    }
  });
  const steps = ownPart('treads', { substance: 'metal', smooth: false }, (builder) => {
    for (let k = 1; k <= treads; k += 1) {
      const [, y, z] = mix(...front(1), k / (treads + 1));
      const [right] = mix(...front(1), k / (treads + 1));
      builder.box([0, y, z], [2 * right, 0.025, 0.08]);
    }
    builder.box([0, height - 0.0125, 0], [2 * narrow + 0.08, 0.025, Math.max(half * 0.3, 0.12)]);
  });
  return placeParts([stiles, steps], standingAt(ladder.at, ladder.headingDegrees));
}
