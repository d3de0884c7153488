import type { Spot } from '../../../plan/schema/numbers';
import type { Opening } from '../../../plan/schema/pieces';
import { apart, legsOf, type Mitre, mitresOf, tidyPath } from './path';

/** What is left of a run beside a corner's mitre, and the least that an opening may measure; metres. */
const BESIDE_METRES = 0.01;
/** Places nearer than this are one place, metres. */
const SAME_METRES = 1e-4;

/** What openings are cut through: a run along corners, of a height. */
export interface OpenedRun {
  readonly path: readonly Spot[];
  readonly closed: boolean;
  readonly heightMetres: number;
  readonly openings?: readonly Opening[] | undefined;
}

/** An opening where the run has room for it: on the one leg that its middle lies on. Metres. */
export interface PlacedOpening {
  readonly opening: Opening;
  /** Which leg of the tidy path, from 0, and how far along the run that leg begins. */
  readonly leg: number;
  readonly before: number;
  /** From the leg's first corner to either side of the opening. */
  readonly near: number;
  readonly far: number;
  /** Above the run's foot. */
  readonly low: number;
  readonly high: number;
  /** The two sides on the run's middle line. */
  readonly from: Spot;
  readonly to: Spot;
}

/**
 * The openings of a run, in the plan's order. One that reaches over a corner slides along its leg until it clears the
 * mitre there, and is cut down where the leg is too short for it; one above the run, or on a leg without room, is left
 * out. `thicknessMetres` is that of the thickest course.
 */
export function placedOpenings(run: OpenedRun, thicknessMetres: number): readonly PlacedOpening[] {
  const { openings, heightMetres } = run;
  if (!openings || openings.length === 0) return [];
  const tidy = tidyPath(run.path, run.closed);
  const mitres = mitresOf(tidy.corners, tidy.closed);
  let before = 0;
  const legs = legsOf(tidy.corners, tidy.closed).map(({ from, to }, k) => {
    const length = apart(from, to);
    const way: Spot = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
    const [start, end] = [mitres[k], mitres[(k + 1) % mitres.length]].map((mitre) =>
      mitreReach(mitre, way, thicknessMetres / 2),
    );
    const leg = { from, way, before, length, start, end: length - end };
    before += length;
    return leg;
  });
  return openings.flatMap((opening): PlacedOpening[] => {
    const { alongMetres, widthMetres, sillMetres } = opening;
    const index = legs.findIndex((each) => alongMetres <= each.before + each.length);
    const number = index < 0 ? legs.length - 1 : index;
    const leg = legs[number];
    if (!leg) return [];
    const width = Math.min(widthMetres, leg.end - leg.start);
    const low = Math.min(sillMetres, heightMetres);
    const high = Math.min(sillMetres + opening.heightMetres, heightMetres);
    if (width < BESIDE_METRES || high - low < BESIDE_METRES / 10) return [];
    const middle = Math.min(Math.max(alongMetres - leg.before, leg.start + width / 2), leg.end - width / 2);
    const [near, far] = [snapped(middle - width / 2, leg.length), snapped(middle + width / 2, leg.length)];
    const at = (metres: number): Spot => [
      leg.from[0] + leg.way[0] * metres,
      leg.from[1] + leg.way[1] * metres,
    ];
    return [{ opening, leg: number, before: leg.before, near, far, low, high, from: at(near), to: at(far) }];
  });
}

/** How far along a leg its corner's mitre reaches, and a little more; nothing at a square end. */
function mitreReach({ right }: Mitre, [x, z]: Spot, halfMetres: number): number {
  const reach = Math.abs(right[0] * x + right[1] * z) * halfMetres;
  return reach > SAME_METRES ? reach + BESIDE_METRES : 0;
}

const snapped = (metres: number, length: number): number =>
  metres < SAME_METRES * 10 ? 0 : length - metres < SAME_METRES * 10 ? length : metres;

/** A stretch of a run between two places of it where something changes: a corner, or the side of an opening. */
export interface Column {
  /** Which leg of the tidy path it lies on, from 0. */
  readonly leg: number;
  readonly from: Mitre;
  readonly to: Mitre;
  /** What is open in it: from and to above the run's foot, metres; may overlap. */
  readonly voids: readonly (readonly [low: number, high: number])[];
}

/** A run in columns, in its order; each begins where the one before it ends. */
export function columnsOf(
  run: Pick<OpenedRun, 'path' | 'closed'>,
  openings: readonly PlacedOpening[],
): { readonly columns: readonly Column[]; readonly closed: boolean } {
  const tidy = tidyPath(run.path, run.closed);
  const mitres = mitresOf(tidy.corners, tidy.closed);
  const columns = legsOf(tidy.corners, tidy.closed).flatMap(({ from, to }, leg): Column[] => {
    const length = apart(from, to);
    const here = openings.filter((each) => each.leg === leg);
    const cuts = distinct([0, length, ...here.flatMap(({ near, far }) => [near, far])]);
    const right: Spot = [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
    const station = (k: number): Mitre => {
      if (k === 0) return mitres[leg];
      if (k === cuts.length - 1) return mitres[(leg + 1) % mitres.length];
      const share = cuts[k] / length;
      return { at: [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share], right };
    };
    const stations = cuts.map((_, k) => station(k));
    return cuts.slice(1).map((cut, k) => {
      const middle = (cuts[k] + cut) / 2;
      const voids = here
        .filter(({ near, far }) => near < middle && middle < far)
        .map(({ low, high }) => [low, high] as const);
      return { leg, from: stations[k], to: stations[k + 1], voids };
    });
  });
  return { columns, closed: tidy.closed };
}

/** Numbers in their order, those that are nearly the same once: the first of them stands for all. */
export function distinct(numbers: readonly number[]): readonly number[] {
  const sorted = [...numbers].sort((a, b) => a - b);
  const kept: number[] = [];
  for (const number of sorted) {
    const last = kept.at(-1);
    if (last === undefined || number - last > SAME_METRES) kept.push(number);
  }
  return kept;
}

/** The runs that are left of a run where whole columns are taken out of it. */
export function uncut(
  run: Pick<OpenedRun, 'path' | 'closed'>,
  cuts: readonly PlacedOpening[],
): readonly { readonly path: readonly Spot[]; readonly closed: boolean }[] {
  if (cuts.length === 0) return [{ path: run.path, closed: run.closed }];
  const { columns, closed } = columnsOf(run, cuts);
  const first = columns.findIndex(({ voids }) => voids.length > 0);
  // A closed run is walked from an opening on, so that no stretch is parted at the first corner.
  const ordered = closed ? [...columns.slice(first), ...columns.slice(0, first)] : columns;
  const stretches: Spot[][] = [];
  let isOpen = true;
  for (const { from, to, voids } of ordered) {
    const wasOpen = isOpen;
    isOpen = voids.length > 0;
    if (isOpen) continue;
    if (wasOpen) stretches.push([from.at]);
    stretches[stretches.length - 1].push(to.at);
  }
  return stretches.map((path) => ({ path, closed: false }));
}
