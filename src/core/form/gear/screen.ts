import { hypot } from '../../units/steadyMath';
import { AT_ORIGIN, type Placement } from '../build/placement';
import type { ShapeBuilder } from '../build/shapeBuilder';
import type { Vec3 } from '../build/vector';

/** Width and height of a 16:9 screen of a diagonal, metres. */
export function screenSize(diagonalMetres: number): readonly [number, number] {
  const unit = diagonalMetres / hypot(16, 9);
  return [16 * unit, 9 * unit];
}

const BEZEL = 0.015;
const DEPTH = 0.05;

/** The case of a monitor whose screen, facing −z, has its middle at `at`. */
export function addCase(
  builder: ShapeBuilder,
  at: Vec3,
  diagonal: number,
  placement: Placement = AT_ORIGIN,
): void {
  const [width, height] = screenSize(diagonal);
  builder.box([at[0], at[1], at[2] + DEPTH / 2], [width + 2 * BEZEL, height + 2 * BEZEL, DEPTH], placement);
}

/** The screen itself: a thin plate on the front of the case. */
export function addScreen(
  builder: ShapeBuilder,
  at: Vec3,
  diagonal: number,
  placement: Placement = AT_ORIGIN,
): void {
  const [width, height] = screenSize(diagonal);
  builder.box([at[0], at[1], at[2] - 0.001], [width, height, 0.002], placement);
}

/** Height of the case round a screen. */
export const caseHeight = (diagonal: number): number => screenSize(diagonal)[1] + 2 * BEZEL;
/** Width of the case round a screen. */
export const caseWidth = (diagonal: number): number => screenSize(diagonal)[0] + 2 * BEZEL;
/** Depth of the case, metres. */
export const CASE_DEPTH = DEPTH;
