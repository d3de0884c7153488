import { BoxGeometry, BufferAttribute, BufferGeometry, CylinderGeometry } from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import type { Vec3 } from '../../core/form/build/vector';
import type { FrameShape } from '../../core/optics/types';

/** How far the pyramid's edges are drawn, and where frames are drawn across it, metres. */
const PYRAMID_METRES = 14;
const FRAMES_METRES = [0.9, 5, PYRAMID_METRES];

/** A camera in its own frame: the entrance pupil at the origin, looking along −z. */
export function cameraBody(): BufferGeometry {
  const body = new BoxGeometry(0.15, 0.17, 0.26).translate(0, 0, 0.24);
  const magazine = new BoxGeometry(0.1, 0.09, 0.2).translate(0, 0.13, 0.26);
  const barrel = new CylinderGeometry(0.057, 0.05, 0.18, 20).rotateX(Math.PI / 2).translate(0, 0, 0.03);
  return mergeGeometries([body, magazine, barrel]);
}

/** Pairs of points: the edges of the field of view, and the delivered frame across it at a few distances. */
export function pyramidLines({ tanHalfWidth, tanHalfHeight }: FrameShape): BufferGeometry {
  const at = (metres: number, x: number, y: number) => [
    x * tanHalfWidth * metres,
    y * tanHalfHeight * metres,
    -metres,
  ];
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const;
  const points: number[] = [];
  for (const [x, y] of corners) points.push(0, 0, 0, ...at(PYRAMID_METRES, x, y));
  for (const metres of FRAMES_METRES) {
    corners.forEach(([x, y], k) => {
      const [nextX, nextY] = corners[(k + 1) % 4];
      points.push(...at(metres, x, y), ...at(metres, nextX, nextY));
    });
  }
  return linesThrough(points);
}

/** Pairs of points along a level round. */
export function roundPoints([x, y, z]: Vec3, radiusMetres: number): number[] {
  const sides = 64;
  const points: number[] = [];
  for (let k = 0; k < sides; k += 1) {
    for (const corner of [k, k + 1]) {
      const turn = (2 * Math.PI * corner) / sides;
      points.push(x + Math.cos(turn) * radiusMetres, y, z + Math.sin(turn) * radiusMetres);
    }
  }
  return points;
}

/** Lines between pairs of points. */
export function linesThrough(points: readonly number[]): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(points), 3));
  return geometry;
}
