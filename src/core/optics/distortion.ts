import type { Distortion } from '../plan/schema/kit';
import { hypot } from '../units/steadyMath';

type Pair = readonly [number, number];

/**
 * Where the lens draws a direction: tangents (x to the right, y down) to distorted tangents, Brown–Conrady with
 * k1 k2 k3 p1 p2 on normalised coordinates, fx = f/squeeze, as OpenCV defines it.
 *
 * Source: [opencv-calib3d]
 */
export function distort({ k1, k2, k3, p1, p2 }: Distortion, x: number, y: number): Pair {
  const r2 = x * x + y * y;
  const radial = 1 + r2 * (k1 + r2 * (k2 + r2 * k3));
  return [
    x * radial + 2 * p1 * x * y + p2 * (r2 + 2 * x * x),
    y * radial + p1 * (r2 + 2 * y * y) + 2 * p2 * x * y,
  ];
}

const MOST_STEPS = 40;
const CLOSE_ENOUGH = 1e-14;

/**
 * The inverse of {@link distort} by Newton's method, to 1e-12 of a tangent inside the lens's good radius.
 * Null where no direction inside that radius is drawn there.
 */
export function undistort(lens: Distortion, xDrawn: number, yDrawn: number): Pair | null {
  const { k1, k2, k3, p1, p2 } = lens;
  const limit = goodRadius(lens);
  let x = xDrawn;
  let y = yDrawn;
  const start = Math.sqrt(x * x + y * y);
  if (start > limit * 0.95) {
    x *= (limit * 0.95) / start;
    y *= (limit * 0.95) / start;
  }
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const [xNow, yNow] = distort(lens, x, y);
    const ex = xNow - xDrawn;
    const ey = yNow - yDrawn;
    if (ex * ex + ey * ey < CLOSE_ENOUGH * CLOSE_ENOUGH) break;
    const r2 = x * x + y * y;
    const radial = 1 + r2 * (k1 + r2 * (k2 + r2 * k3));
    const slope = 2 * (k1 + r2 * (2 * k2 + 3 * r2 * k3));
    const xx = radial + x * x * slope + 2 * p1 * y + 6 * p2 * x;
    const xy = x * y * slope + 2 * p1 * x + 2 * p2 * y;
    const yy = radial + y * y * slope + 6 * p1 * y + 2 * p2 * x;
    const determinant = xx * yy - xy * xy;
    if (!(Math.abs(determinant) > 1e-12)) return null;
    x -= (yy * ex - xy * ey) / determinant;
    y -= (xx * ey - xy * ex) / determinant;
  }
  const [xNow, yNow] = distort(lens, x, y);
  const missed = hypot(xNow - xDrawn, yNow - yDrawn);
  return missed < 1e-9 && hypot(x, y) <= limit ? [x, y] : null;
}

/** Widest tangent that is ever asked of a lens without a turning point: 84 degrees off the axis. */
const WIDEST_TANGENT = 10;

/**
 * The radius (a tangent) up to which the radial polynomial rises; beyond it the model folds back and means nothing.
 */
export function goodRadius(lens: Distortion): number {
  const known = KNOWN_RADII.get(lens);
  if (known !== undefined) return known;
  const radius = searchGoodRadius(lens);
  KNOWN_RADII.set(lens, radius);
  return radius;
}

const KNOWN_RADII = new WeakMap<Distortion, number>();

function searchGoodRadius({ k1, k2, k3 }: Distortion): number {
  const slope = (r2: number) => 1 + r2 * (3 * k1 + r2 * (5 * k2 + r2 * 7 * k3));
  const steps = 2000;
  let low = 0;
  for (let k = 1; k <= steps; k += 1) {
    const high = (WIDEST_TANGENT * k) / steps;
    if (slope(high * high) <= 0) {
      let top = high;
      for (let halving = 0; halving < 60; halving += 1) {
        const middle = (low + top) / 2;
        if (slope(middle * middle) > 0) low = middle;
        else top = middle;
      }
      return low;
    }
    low = high;
  }
  return WIDEST_TANGENT;
}
