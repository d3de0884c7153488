import { add, mix, scale, type Vec3 } from '../form/build/vector';
import { cameraFromWorld } from './project';
import type { Camera, CameraPose } from './types';

/** A straight line in a view: 0..1 of it from its upper left, beyond that outside of it. */
export type Seen = readonly [from: readonly [number, number], to: readonly [number, number]];

/** Nearer than this to the plane of the eye, of a way one metre long, a line is cut: it would run to infinity. */
const NEAREST = 0.02;

/**
 * The edges of a camera's frame for an eye in the camera's place that looks another way. `halves` are tangents of half
 * the angles that the eye takes in, across and up. What lies behind the eye is cut off; a lens's distortion is left out.
 */
export function frameAround(
  { pose, frame }: Camera,
  look: CameraPose,
  halves: readonly [number, number],
): readonly Seen[] {
  const cornerAt = (right: number, up: number): Vec3 => {
    const aside = add(
      scale(pose.right, right * frame.tanHalfWidth),
      scale(pose.up, up * frame.tanHalfHeight),
    );
    return cameraFromWorld(look, add(pose.position, add(pose.forward, aside)));
  };
  const corners = [cornerAt(-1, 1), cornerAt(1, 1), cornerAt(1, -1), cornerAt(-1, -1)];
  const flat = ([x, y, z]: Vec3): readonly [number, number] => [
    0.5 + x / z / (2 * halves[0]),
    0.5 - y / z / (2 * halves[1]),
  ];
  return corners.flatMap((from, k): readonly Seen[] => {
    const to = corners[(k + 1) % corners.length];
    const [near, far] = [from[2] - NEAREST, to[2] - NEAREST];
    if (near <= 0 && far <= 0) return [];
    const cut = mix(from, to, near / (near - far));
    return [[flat(near < 0 ? cut : from), flat(far < 0 ? cut : to)]];
  });
}
