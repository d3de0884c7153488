import type { Caution } from '../../core/cautions/types';

/** Lines on the ground are drawn this high above it, metres. */
const LIFT_METRES = 0.02;

/** The stretches of a caution as pairs of points on the floor, world metres: edges, and how far something is from them. */
export function cautionLines(caution: Caution | null): readonly number[] {
  if (!caution) return [];
  const y = (caution.place?.[1] ?? 0) + LIFT_METRES;
  return caution.stretches.flatMap(([from, to]) => [from[0], y, from[1], to[0], y, to[1]]);
}
