import { sharedArea } from '../geometry/clipping';
import type { Bounds, Spot } from '../geometry/spots';

/** A sign that wants a place by what it is about, pixels of the pane. */
export interface SignWish {
  readonly at: Spot;
  /** Half of its width and height. */
  readonly half: number;
}

/** Where a sign stands, its middle. */
export interface SignSpot {
  readonly spot: Spot;
  /** Whether it stands so far off that only a line says what it is about. */
  readonly isFar: boolean;
}

/** The ways to stand off, best first; as shares of the distance. */
const WAYS: readonly Spot[] = [
  [0.7, -0.7],
  [-0.7, -0.7],
  [0.7, 0.7],
  [-0.7, 0.7],
  [1, 0],
  [0, -1],
  [-1, 0],
  [0, 1],
];
/** How far off, pixels, nearest first. By eye, no source. */
const AWAY = [18, 28, 40, 54] as const;
/** From here on it has a line, pixels. */
const FAR = 28;
/** Space between a sign and a name or another sign, pixels. */
const SPACE = 1;

/**
 * A place for each sign near what it is about: the first where it lies over no name and no other sign, within the pane;
 * where there is none, that where it covers least. The first wishes choose first.
 */
export function signSpots(
  wishes: readonly SignWish[],
  names: readonly Bounds[],
  [left, top, right, bottom]: Bounds,
): readonly SignSpot[] {
  const taken: Bounds[] = [...names];
  return wishes.map(({ at, half }) => {
    const reach = AWAY[AWAY.length - 1] + half + SPACE;
    const near = taken.filter(
      (box) =>
        box[0] < at[0] + reach && box[2] > at[0] - reach && box[1] < at[1] + reach && box[3] > at[1] - reach,
    );
    let best: { readonly spot: SignSpot; readonly box: Bounds; readonly covered: number } | null = null;
    for (const away of AWAY) {
      for (const [across, down] of WAYS) {
        const [x, y] = [at[0] + across * away, at[1] + down * away];
        const box: Bounds = [x - half - SPACE, y - half - SPACE, x + half + SPACE, y + half + SPACE];
        if (box[0] < left || box[1] < top || box[2] > right || box[3] > bottom) continue;
        const covered = near.reduce((sum, other) => sum + sharedArea(other, box), 0);
        if (best && covered >= best.covered) continue;
        best = { spot: { spot: [x, y], isFar: away >= FAR }, box, covered };
        if (covered === 0) break;
      }
      if (best?.covered === 0) break;
    }
    // What it is about lies outside of the pane, and so does its sign.
    if (!best) return { spot: [at[0] + WAYS[0][0] * AWAY[0], at[1] + WAYS[0][1] * AWAY[0]], isFar: false };
    taken.push(best.box);
    return best.spot;
  });
}
