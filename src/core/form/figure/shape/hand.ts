import { cos, sin } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import type { Skeleton } from '../skeleton';
import { limb, strand } from './sections';

/** How a hand is held: at rest, flat, or closed about something. */
export type HandHold = 'relaxed' | 'open' | 'grip';
const CURL: Readonly<Record<HandHold, readonly [number, number]>> = {
  relaxed: [18, 34],
  open: [2, 7],
  grip: [48, 85],
};

/** Fingers from first to little: where they root across the palm (− towards the thumb) and their length, hand lengths. */
const FINGERS: readonly (readonly [number, number, number])[] = [
  [-0.092, 0.4, 0.03],
  [-0.031, 0.45, 0.031],
  [0.031, 0.42, 0.03],
  [0.09, 0.33, 0.026],
];

/**
 * A hand in the frame of its wrist: fingers down −y, thumb ahead (−z), the palm towards the body (−x on the right).
 */
export function handShape(skeleton: Skeleton, side: number, hold: HandHold, colour: string): PartShape {
  const builder = new ShapeBuilder();
  const size = skeleton.hand;
  const girth = 1 + (skeleton.measures.girth - 1) * 0.5;
  limb(
    builder,
    [
      { y: 0.1 * size, half: 0.085 * size, front: 0.12 * size, back: 0.12 * size },
      { y: -0.22 * size, half: 0.08 * size, front: 0.145 * size, back: 0.14 * size, square: 2.6 },
      { y: -0.42 * size, half: 0.066 * size, front: 0.138 * size, back: 0.135 * size, square: 2.8 },
      { y: -0.55 * size, half: 0.046 * size, front: 0.128 * size, back: 0.12 * size, square: 3 },
    ].map((section) => ({ ...section, half: section.half * girth })),
    8,
    { last: -0.03 * size, steps: 1 },
  );
  const curl = CURL[hold];
  for (const [root, long, radius] of FINGERS) {
    let at: Vec3 = [0, -0.5 * size, root * size];
    let turn = 0;
    const points = [{ at, radii: [radius * 1.25 * size, radius * 1.1 * size] as const }];
    [0.52, 0.48].forEach((share, k) => {
      turn += (curl[k] * Math.PI) / 180;
      const step = long * share * size * (k === 0 ? 1.1 : 1);
      at = [at[0] - side * sin(turn) * step, at[1] - cos(turn) * step, at[2] + root * 0.12 * step];
      const thin = [1, 0.62][k];
      points.push({ at, radii: [radius * 1.15 * thin * size, radius * thin * size] });
    });
    strand(builder, points, [0, 0, 1], 6);
  }
  const inward = hold === 'open' ? 0.1 : 0.35;
  const thumb: { at: Vec3; radii: readonly [number, number] }[] = [
    [0.02, -0.08, -0.06, 0.062],
    [-0.15 * inward, -0.25, -0.17, 0.052],
    [-0.45 * inward, -0.38, -0.22, 0.04],
    [-0.75 * inward, -0.5, -0.235, 0.022],
  ].map(([x, y, z, radius]) => ({
    at: [side * x * size, y * size, z * size],
    radii: [radius * size, radius * 0.9 * size],
  }));
  strand(builder, thumb, [1, 0, 0], 6);
  return builder.finish({ substance: 'skin', colour, smooth: true });
}
