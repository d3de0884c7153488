import type { Spot } from '../../../plan/schema/numbers';
import { hypot } from '../../../units/steadyMath';

/** A sharp corner's mitre reaches out at most this many half thicknesses; sharper ones are cut back to it. */
const MITRE_LIMIT = 4;

/** A corner of a run, and the way its right-hand side runs from there: one metre of half thickness reaches `right`. */
export interface Mitre {
  readonly at: Spot;
  readonly right: Spot;
}

/** The path without corners on top of each other; one of fewer than three corners cannot close. */
export function tidyPath(
  path: readonly Spot[],
  closed: boolean,
): { readonly corners: readonly Spot[]; readonly closed: boolean } {
  const corners: Spot[] = [];
  for (const spot of path) {
    const before = corners.at(-1);
    if (!before || apart(before, spot) > 1e-4) corners.push(spot);
  }
  while (closed && corners.length > 1 && apart(corners[0], corners[corners.length - 1]) <= 1e-4)
    corners.pop();
  return { corners, closed: closed && corners.length > 2 };
}

/** Distance of two places on the deck, metres. */
export const apart = (a: Spot, b: Spot): number => hypot(b[0] - a[0], b[1] - a[1]);

/** Corner by corner, how the two sides of a run of some thickness meet. Right is as one walks it, seen from above. */
export function mitresOf(corners: readonly Spot[], closed: boolean): readonly Mitre[] {
  const count = corners.length;
  return corners.map((at, k) => {
    const before = k > 0 ? corners[k - 1] : closed ? corners[count - 1] : null;
    const after = k + 1 < count ? corners[k + 1] : closed ? corners[0] : null;
    const arriving = before ? rightOf(before, at) : null;
    const leaving = after ? rightOf(at, after) : null;
    return { at, right: between(arriving ?? leaving ?? [1, 0], leaving ?? arriving ?? [1, 0]) };
  });
}

/** The straight pieces between corners, with the one that closes the run. */
export function legsOf(
  corners: readonly Spot[],
  closed: boolean,
): readonly { readonly from: Spot; readonly to: Spot }[] {
  return corners.flatMap((from, k) => {
    const to = corners[k + 1] ?? (closed ? corners[0] : null);
    return to ? [{ from, to }] : [];
  });
}

/** Corners, ends and evenly spaced places between them, at most `atMostMetres` apart. */
export function spacedAlong(
  corners: readonly Spot[],
  closed: boolean,
  atMostMetres: number,
): readonly Spot[] {
  const spots = legsOf(corners, closed).flatMap(({ from, to }) => {
    const bays = Math.max(1, Math.ceil(apart(from, to) / atMostMetres - 1e-9));
    return Array.from({ length: bays }, (_, bay): Spot => {
      const share = bay / bays;
      return [from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share];
    });
  });
  return closed ? spots : [...spots, ...corners.slice(-1)];
}

function rightOf(from: Spot, to: Spot): Spot {
  const size = apart(from, to);
  return size > 0 ? [-(to[1] - from[1]) / size, (to[0] - from[0]) / size] : [1, 0];
}

function between(arriving: Spot, leaving: Spot): Spot {
  const sum: Spot = [arriving[0] + leaving[0], arriving[1] + leaving[1]];
  const size = hypot(sum[0], sum[1]);
  // Straight back on itself: there is no mitre, the run ends square.
  if (size < 1e-6) return arriving;
  // |sum| = 2 cos(half the turn), and a mitre reaches 1 ÷ cos(half the turn).
  const reach = Math.min(MITRE_LIMIT, 2 / size);
  return [(sum[0] / size) * reach, (sum[1] / size) * reach];
}
