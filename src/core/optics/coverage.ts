import { asin, hypot } from '../units/steadyMath';

/** How a lens's image circle lies over a gate, both centred. */
export interface Coverage {
  /** Diameter that the gate, or the used part of it, asks for: its diagonal, millimetres. */
  readonly neededMm: number;
  readonly circleMm: number;
  /** Whether all of it is lit. */
  readonly covers: boolean;
  /** Share of the gate's area outside the circle, 0..1. */
  readonly darkShare: number;
  /** Where the circle crosses the upper edge and the right edge, as shares of half its width and half its height; 1 where it does not. */
  readonly cutsAt: readonly [alongWidth: number, alongHeight: number];
}

/**
 * Compares an image circle with the rectangle of the gate that is used, [width, height] in millimetres.
 * The dark share is exact: the rectangle less the disc within it.
 */
export function coverageOf(usedMm: readonly [number, number], circleMm: number): Coverage {
  const [a, b] = [usedMm[0] / 2, usedMm[1] / 2];
  const r = circleMm / 2;
  const neededMm = hypot(usedMm[0], usedMm[1]);
  const covers = circleMm >= neededMm - 1e-9;
  const cross = (beside: number, half: number): number =>
    r <= beside ? 0 : Math.min(1, Math.sqrt(r * r - beside * beside) / half);
  return {
    neededMm,
    circleMm,
    covers,
    darkShare: covers ? 0 : 1 - discIn(a, b, r) / (a * b),
    cutsAt: covers ? [1, 1] : [cross(b, a), cross(a, b)],
  };
}

/** Area of a quarter disc of radius r within the rectangle from its middle to (a, b): the integral of min(b, √(r² − x²)). */
function discIn(a: number, b: number, r: number): number {
  const flat = r > b ? Math.min(a, Math.sqrt(r * r - b * b)) : 0;
  const end = Math.min(a, r);
  return flat * b + underArc(end, r) - underArc(flat, r);
}

/** Integral of √(r² − x²) from 0 to x. */
function underArc(x: number, r: number): number {
  const rise = Math.sqrt(Math.max(0, r * r - x * x));
  return 0.5 * (x * rise + r * r * asin(x / r));
}
