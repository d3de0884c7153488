import type { Vec3 } from '../../build/vector';
import { ownPart } from '../part';
import { addLathe, addPipe, arc } from '../rounds';
import { FORWARD, glowing, type Housing } from './types';

/** Thickness of the cage's wire. Source: common practice, no source */
const WIRE_RADIUS = 0.003;

/** A round lamp for a wall: a cast base, a glass dome and a cage of wire over it. Its back is flat. */
export function bulkheadHousing([width, height, depth]: Vec3, colour: string | null): Housing {
  const radius = Math.min(width, height) / 2;
  const half = depth / 2;
  const axis = { at: [0, 0, 0], along: FORWARD } as const;
  const ring = -half + depth * 0.35;
  const reach = half - WIRE_RADIUS;
  const housing = ownPart('housing', { substance: 'dark metal' }, (builder) => {
    addLathe(
      builder,
      axis,
      [
        [-half, radius],
        [-half + depth * 0.12, radius],
        [ring, radius * 0.92],
        [ring, radius * 0.7],
      ],
      14,
    );
  });
  const dome = reach - ring - 2 * WIRE_RADIUS;
  const face = ownPart('face', glowing(colour), (builder) => {
    addLathe(
      builder,
      axis,
      [
        [ring - 0.002, radius * 0.78],
        [ring + dome * 0.5, radius * 0.72],
        [ring + dome * 0.85, radius * 0.45],
        [ring + dome, 0],
      ],
      12,
    );
  });
  const cage = ownPart('cage', { substance: 'dark metal' }, (builder) => {
    const rib = (side: Vec3) => {
      const shoulder = ring + dome * 0.55;
      const bends: readonly (readonly [share: number, along: number])[] = [
        [-0.86, ring - 0.01],
        [-0.82, shoulder],
        [-0.5, reach],
        [0.5, reach],
        [0.82, shoulder],
        [0.86, ring - 0.01],
      ];
      const points = bends.map(
        ([share, along]): Vec3 => [side[0] * share * radius, side[1] * share * radius, -along],
      );
      addPipe(builder, points, WIRE_RADIUS, 5);
    };
    rib([1, 0, 0]);
    rib([0, 1, 0]);
    const loop = arc(
      [0, 0, -(ring + dome * 0.55)],
      [
        [1, 0, 0],
        [0, 1, 0],
      ],
      radius * 0.82,
      0,
      360,
      10,
    );
    addPipe(builder, loop, WIRE_RADIUS, 4);
  });
  return {
    parts: [housing, cage],
    glow: [face],
    faceMetres: ring + dome,
    frontMetres: half,
    glowMetres: [radius * 1.56, radius * 1.56, dome],
  };
}
