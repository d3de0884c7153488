import { cos, pow, sin } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import type { Skeleton } from '../skeleton';
import { loft, type Ring } from './loft';
import { limb } from './sections';

/** A shoe from heel to toe, shares of stature: how far ahead of the ankle (−) or behind, half width, height, toe spring. */
const LAST: readonly (readonly [number, number, number, number])[] = [
  [0.037, 0.01, 0.028, 0.006],
  [0.033, 0.0165, 0.036, 0.001],
  [0.014, 0.0195, 0.047, 0],
  [-0.014, 0.0195, 0.05, 0],
  [-0.042, 0.0215, 0.038, 0],
  [-0.072, 0.0255, 0.03, 0],
  [-0.095, 0.0235, 0.025, 0.002],
  [-0.109, 0.017, 0.02, 0.005],
  [-0.116, 0.008, 0.014, 0.008],
];

/** Where a shoe can touch the floor, in the frame of the ankle, metres: heel, ball, toe. */
export function solePoints(stature: number, ankleHeight: number): readonly Vec3[] {
  return [0, 1, 2, 5, 6, 7, 8].map(
    (k): Vec3 => [0, LAST[k][3] * stature - ankleHeight, LAST[k][0] * stature],
  );
}
/** The ball of the foot, about which the heel rises, in the frame of the ankle, shares of stature ahead. */
export const BALL_AHEAD = 0.076;
/** The back of the heel, in the frame of the ankle, shares of stature behind. */
export const HEEL_BEHIND = 0.033;

/** A shoe, its sole level, in the frame of the ankle. */
export function footShape(skeleton: Skeleton, side: number): PartShape {
  const builder = new ShapeBuilder();
  const s = skeleton.measures.statureMetres;
  const floor = -skeleton.ankleHeight;
  const rings = LAST.map(([z, half, height, spring]): Ring => {
    const sides = 7;
    // The inner edge of a foot is straight, the outer one curves.
    const x = side * (z < -0.03 ? 0.003 : 0) * s;
    return Array.from({ length: sides }, (_, k): Vec3 => {
      const turn = (2 * Math.PI * (k + 0.5)) / sides;
      const up = sin(turn);
      const across = Math.sign(cos(turn)) * pow(Math.abs(cos(turn)), up > 0 ? 1 : 0.35);
      const y = up > 0 ? 0.011 + (height - 0.011) * up : 0.011 * (1 - Math.min(1, Math.abs(up) * 1.6));
      return [x + half * s * across, floor + (spring + Math.max(0, y)) * s, z * s];
    });
  });
  loft(builder, rings);
  limb(
    builder,
    [
      { y: -0.012 * s, half: 0.019 * s, front: 0.024 * s, back: 0.026 * s },
      { y: 0.012 * s, half: 0.0195 * s, front: 0.022 * s, back: 0.024 * s },
    ],
    7,
    { last: 0.006 * s, steps: 1 },
  );
  return builder.finish({ substance: 'shoe', smooth: true });
}
