import { candelaTable, edgeDegrees } from '../../../core/form/photometry/candelaTable';
import type { Distribution } from '../../../core/plan/schema/distribution';

/** One half of the plot: the curves of a half-plane and of the one across from it, and where half and a tenth are. */
export interface PolarHalf {
  readonly side: 1 | -1;
  readonly curves: readonly string[];
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
}

export interface Polar {
  readonly rings: readonly { readonly candela: number; readonly radius: number }[];
  readonly halves: readonly [right: PolarHalf, left: PolarHalf];
  /** Whether anything shines beyond a right angle off the axis. */
  readonly isRound: boolean;
}

/** Radius of the outermost ring, in the units of the drawing. */
export const POLAR_RADIUS = 116;
const FINEST_DEGREES = 1.5;
const MOST_RINGS = 4;

/** A place of the plot: the axis runs down the sheet, as a lamp hangs. */
export function polarPlace(side: 1 | -1, degrees: number, radius: number): readonly [number, number] {
  const angle = (degrees * Math.PI) / 180;
  return [side * radius * Math.sin(angle), radius * Math.cos(angle)];
}

/** Steps of 1, 2 or 5 times a power of ten, as many as leave room for their names. */
export function ringStep(peakCandela: number): number {
  const size = 10 ** Math.floor(Math.log10(peakCandela / MOST_RINGS));
  return (
    [1, 2, 5, 10].map((times) => times * size).find((step) => peakCandela / step <= MOST_RINGS) ?? peakCandela
  );
}

/** The angles at which a curve is drawn: the table's own, and enough between them to be round. */
function drawnAngles(verticalDegrees: readonly number[]): readonly number[] {
  return verticalDegrees.flatMap((from, k) => {
    const to = verticalDegrees[k + 1];
    if (to === undefined) return [from];
    const pieces = Math.max(1, Math.ceil((to - from) / FINEST_DEGREES));
    return Array.from({ length: pieces }, (_, piece) => from + ((to - from) * piece) / pieces);
  });
}

/** A table as a polar plot: what lies right and left of the lamp in the right half, above and below in the left. */
export function polarOf(distribution: Distribution): Polar {
  const table = candelaTable(distribution);
  const { peakCandela, candelaAt, isAxial } = table;
  const step = ringStep(peakCandela);
  const rings = Math.ceil(peakCandela / step - 1e-9);
  const perCandela = POLAR_RADIUS / (rings * step);
  const angles = drawnAngles(distribution.verticalDegrees);
  const curve = (side: 1 | -1, round: number): string => {
    const places = angles.map((angle) => polarPlace(side, angle, candelaAt(angle, round) * perCandela));
    const [first, last] = [angles[0], angles[angles.length - 1]];
    const line = places.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L');
    // The axis between the halves is no edge of the light; where the table ends beside it, there is one.
    return `M${first > 0 ? '0 0L' : ''}${line}${last < 180 ? 'L0 0' : ''}`;
  };
  const half = (side: 1 | -1, round: number): PolarHalf => {
    const edge = (share: number): number =>
      [round, round + 180].reduce(
        (sum, plane) => sum + edgeDegrees(distribution, table, plane, share) / 2,
        0,
      );
    const curves = [curve(side, round), ...(isAxial ? [] : [curve(side, round + 180)])];
    return { side, curves: [...new Set(curves)], beamDegrees: edge(0.5), fieldDegrees: edge(0.1) };
  };
  return {
    rings: Array.from({ length: rings }, (_, k) => ({
      candela: (k + 1) * step,
      radius: (k + 1) * step * perCandela,
    })),
    halves: [half(1, 0), half(-1, 90)],
    isRound: distribution.verticalDegrees.some(
      (angle, v) => angle > 90 && distribution.candela.some((row) => row[v] > peakCandela / 200),
    ),
  };
}
