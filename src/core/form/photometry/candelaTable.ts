import type { Distribution } from '../../plan/schema/distribution';
import { cos, sin } from '../../units/steadyMath';

/** A measured table, ready to be asked. */
export interface CandelaTable {
  /** Candela at degrees off the axis and degrees round it, 0 beyond the table. */
  readonly candelaAt: (verticalDegrees: number, horizontalDegrees: number) => number;
  /** Whether it is the same all round its axis. */
  readonly isAxial: boolean;
  readonly peakCandela: number;
  readonly lumens: number;
  /** Full angles of half and a tenth of the peak, as means over what lies round the axis; at least 1, at most 360. */
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
}

/** Planes round the axis over which the angles of a table are averaged. */
const PLANES = 36;

/** Number of the last angle that is not beyond a value, at most the one before the last. */
export function slotOf(angles: readonly number[], value: number): number {
  let [low, high] = [0, angles.length - 2];
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (angles[middle] <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** An angle round the axis as the table has it, by its symmetry. */
function folded(first: number, last: number, degrees: number): number {
  const turn = ((degrees % 360) + 360) % 360;
  if (first === 90) return turn < 90 ? 180 - turn : turn > 270 ? 540 - turn : turn;
  if (last === 360) return turn;
  const half = turn > 180 ? 360 - turn : turn;
  return last === 90 && half > 90 ? 180 - half : half;
}

function readerOf({ verticalDegrees, horizontalDegrees, candela }: Distribution): CandelaTable['candelaAt'] {
  const [lowest, highest] = [verticalDegrees[0], verticalDegrees[verticalDegrees.length - 1]];
  const [first, last] = [horizontalDegrees[0], horizontalDegrees[horizontalDegrees.length - 1]];
  return (vertical, horizontal) => {
    if (vertical < lowest || vertical > highest) return 0;
    const v = slotOf(verticalDegrees, vertical);
    const down = (vertical - verticalDegrees[v]) / (verticalDegrees[v + 1] - verticalDegrees[v]);
    const along = (row: readonly number[]): number => row[v] + (row[v + 1] - row[v]) * down;
    if (candela.length === 1) return along(candela[0]);
    const turn = folded(first, last, horizontal);
    const h = slotOf(horizontalDegrees, turn);
    const round = (turn - horizontalDegrees[h]) / (horizontalDegrees[h + 1] - horizontalDegrees[h]);
    const before = along(candela[h]);
    return before + (along(candela[h + 1]) - before) * round;
  };
}

/** Candela at each vertical angle as a mean round the axis, by straight lines between the horizontal ones. */
export function meansRound({ verticalDegrees, horizontalDegrees, candela }: Distribution): readonly number[] {
  if (candela.length === 1) return candela[0];
  const turn = horizontalDegrees[horizontalDegrees.length - 1] - horizontalDegrees[0];
  return verticalDegrees.map((_, v) => {
    let sum = 0;
    for (let h = 1; h < candela.length; h += 1)
      sum += ((candela[h - 1][v] + candela[h][v]) / 2) * (horizontalDegrees[h] - horizontalDegrees[h - 1]);
    return sum / turn;
  });
}

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/**
 * Lumens of a table: Φ = 2π ∫ I(θ) sin θ dθ with I the mean round the axis, exact for intensities that run straight
 * from one angle to the next, as they are read.
 */
function lumensOfTable(table: Distribution): number {
  const { verticalDegrees } = table;
  const means = meansRound(table);
  let sum = 0;
  for (let v = 1; v < verticalDegrees.length; v += 1) {
    const [a, b] = [radians(verticalDegrees[v - 1]), radians(verticalDegrees[v])];
    const slope = (means[v] - means[v - 1]) / (b - a);
    sum += means[v - 1] * (cos(a) - cos(b)) + slope * (sin(b) - sin(a) - (b - a) * cos(b));
  }
  return 2 * Math.PI * sum;
}

/** Degrees off the axis within which a share of the peak is reached in one half-plane; 0 where it never is. */
export function edgeDegrees(
  { verticalDegrees }: Distribution,
  table: Pick<CandelaTable, 'candelaAt' | 'peakCandela'>,
  horizontalDegrees: number,
  share: number,
): number {
  const wanted = table.peakCandela * share;
  const at = verticalDegrees.map((degrees) => table.candelaAt(degrees, horizontalDegrees));
  const last = at.findLastIndex((candela) => candela >= wanted);
  if (last < 0 || last === at.length - 1) return last < 0 ? 0 : verticalDegrees[last];
  const step = verticalDegrees[last + 1] - verticalDegrees[last];
  return verticalDegrees[last] + ((at[last] - wanted) / (at[last] - at[last + 1])) * step;
}

/** The full angle of a share of the peak in the plane of one horizontal angle and the one across from it. */
export const fullAngleDegrees = (
  distribution: Distribution,
  horizontalDegrees: number,
  share: number,
): number =>
  [horizontalDegrees, horizontalDegrees + 180].reduce(
    (sum, degrees) => sum + edgeDegrees(distribution, candelaTable(distribution), degrees, share),
    0,
  );

function makeTable(distribution: Distribution): CandelaTable {
  const isAxial = distribution.candela.length === 1;
  const candelaAt = readerOf(distribution);
  let peakCandela = 0;
  for (const row of distribution.candela)
    for (const candela of row) peakCandela = Math.max(peakCandela, candela);
  const planes = isAxial ? [0] : Array.from({ length: PLANES }, (_, k) => (k * 360) / PLANES);
  const mean = (share: number): number =>
    (2 *
      planes.reduce(
        (sum, plane) => sum + edgeDegrees(distribution, { candelaAt, peakCandela }, plane, share),
        0,
      )) /
    planes.length;
  const beamDegrees = Math.min(360, Math.max(1, mean(0.5)));
  return {
    candelaAt,
    isAxial,
    peakCandela,
    lumens: lumensOfTable(distribution),
    beamDegrees,
    fieldDegrees: Math.min(360, Math.max(beamDegrees, mean(0.1))),
  };
}

const tables = new WeakMap<Distribution, CandelaTable>();

/**
 * A measured table to be asked by angles: straight lines between its angles, its symmetry as LM-63 has it, nothing
 * beyond its ends. Beam and field reach to the farthest direction with half and a tenth of the largest intensity,
 * wherever that is. The same table for the same record.
 *
 * Source: [beam-angle], [lm-63]
 */
export function candelaTable(distribution: Distribution): CandelaTable {
  const known = tables.get(distribution) ?? makeTable(distribution);
  tables.set(distribution, known);
  return known;
}
