import { hypot } from '../units/steadyMath';

/** A lens as focus sees it: what its spherical axis has. An anamorphic lens is focused by its vertical axis. */
export interface FocusGlass {
  readonly focalMm: number;
  /** N, of the entrance pupil f/N high. */
  readonly stop: number;
  /** Diameter on the gate of a blur that still passes for sharp, millimetres. */
  readonly circleMm: number;
}

/** From where to where things pass for sharp, metres from the entrance pupil; `farMetres` may be Infinity. */
export interface DepthOfField {
  readonly nearMetres: number;
  readonly farMetres: number;
}

const METRES_PER_MM = 0.001;

/**
 * The nearest focus that keeps infinity sharp, metres: f²/(N c) + f.
 *
 * Source: [hyperfocal]
 */
export const hyperfocalMetres = ({ focalMm, stop, circleMm }: FocusGlass): number =>
  ((focalMm * focalMm) / (stop * circleMm) + focalMm) * METRES_PER_MM;

/**
 * Depth of field about a focus, all in metres from the entrance pupil: near = s(H − f)/(H + s − 2f),
 * far = s(H − f)/(H − s), infinite from s = H on.
 *
 * Source: [depth-of-field]
 * @throws RangeError for a focus within the focal length, where no lens makes an image
 */
export function depthOfField(glass: FocusGlass, focusMetres: number): DepthOfField {
  const f = glass.focalMm * METRES_PER_MM;
  if (!(focusMetres > f)) {
    throw new RangeError(
      `depthOfField: focus at ${focusMetres} m, expected more than the focal length, ${f} m`,
    );
  }
  const h = hyperfocalMetres(glass);
  return {
    nearMetres: (focusMetres * (h - f)) / (h + focusMetres - 2 * f),
    farMetres: focusMetres >= h ? Number.POSITIVE_INFINITY : (focusMetres * (h - f)) / (h - focusMetres),
  };
}

/**
 * Height of the blur that a point draws on the gate, millimetres: the entrance pupil seen through the point against
 * the plane in focus, (f/N) · |d − s|/d · f/(s − f). Distances in metres from the entrance pupil; Infinity is allowed.
 * An anamorphic lens draws an oval that is this high and, once unsqueezed, 1/squeeze as wide.
 *
 * Source: [depth-of-field]
 */
export function blurMm(
  { focalMm, stop }: Pick<FocusGlass, 'focalMm' | 'stop'>,
  focusMetres: number,
  metres: number,
): number {
  const f = focalMm * METRES_PER_MM;
  const off = metres === Number.POSITIVE_INFINITY ? 1 : Math.abs(metres - focusMetres) / metres;
  return (focalMm / stop) * off * (f / (focusMetres - f));
}

/** Gates between which the usual circle changes, by diagonal in millimetres. */
const SMALL_DIAGONAL = 20;
const LARGE_DIAGONAL = 38;

/**
 * The circle that usually passes for sharp on a gate, millimetres: 0.025 for the 35 mm gates, 0.015 for 16 mm and
 * what is like it, 0.03 for larger ones.
 *
 * Source: [circle-of-confusion], the larger gates' from memory
 */
export function usualCircleMm(gateMm: readonly [number, number]): number {
  const diagonal = hypot(gateMm[0], gateMm[1]);
  if (diagonal < SMALL_DIAGONAL) return 0.015;
  return diagonal < LARGE_DIAGONAL ? 0.025 : 0.03;
}
