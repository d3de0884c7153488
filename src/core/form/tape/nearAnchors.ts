import { metresBetween } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import { type Bounds, boundsOf } from '../../plan/walkWays/planar';
import { Squares } from '../../plan/walkWays/squares';
import type { Anchor } from './anchor';

/** A common tape ends here; beyond, each metre counts double. Source: common practice, no source */
const TAPE_METRES = 15;
/** No tape is longer, metres. Source: common practice, no source */
export const LONGEST_TAPE_METRES = 60;
/** What no tape may cost, metres: the longest from a corner that stays. */
const MOST_COST = LONGEST_TAPE_METRES + (LONGEST_TAPE_METRES - TAPE_METRES);
/**
 * What the first tapes that are tried may cost, metres; then twice as much, and so on: corners round a person are mostly
 * within it. Another would only take longer or shorter for the same tapes.
 */
const FIRST_COST = 8;

/** A square that is so much larger is larger, whatever rounding does to a root. */
const ROUNDED = 1 + 1e-9;

/** What a tape from an anchor to a place costs, in metres: never less than it is long. */
export function costOf({ at: from, reluctance }: Anchor, at: Spot): number {
  const metres = metresBetween(from, at);
  return metres + Math.max(0, metres - TAPE_METRES) + reluctance;
}

interface Placed {
  readonly anchor: Anchor;
  /** Its place in the plan's list. */
  readonly place: number;
  readonly bounds: Bounds;
}

/** The anchors of a floor by where they are, so that few of a large roof are put in order. */
export class NearAnchors {
  private readonly squares: Squares<Placed>;

  constructor(private readonly anchors: readonly Anchor[]) {
    this.squares = new Squares(
      anchors.map((anchor, place) => ({ anchor, place, bounds: boundsOf([anchor.at]) })),
    );
  }

  /** All that are not too far away, those from which a tape to a place costs least first; of those that cost the same, the first in the list. */
  *byCost(at: Spot): Generator<Anchor> {
    let given = 0;
    let least = Number.NEGATIVE_INFINITY;
    for (let most = FIRST_COST; given < this.anchors.length && least < MOST_COST; most *= 2) {
      const next: { readonly anchor: Anchor; readonly place: number; readonly cost: number }[] = [];
      const upTo = Math.min(most, MOST_COST);
      this.squares.every(at, at, most, ({ anchor, place }) => {
        const [dx, dz] = [anchor.at[0] - at[0], anchor.at[1] - at[1]];
        // A tape costs no less than it is long.
        if (dx * dx + dz * dz > upTo * upTo * ROUNDED) return true;
        const cost = costOf(anchor, at);
        if (cost > least && cost <= upTo) next.push({ anchor, place, cost });
        return true;
      });
      next.sort((a, b) => a.cost - b.cost || a.place - b.place);
      for (const { anchor } of next) yield anchor;
      given += next.length;
      least = most;
    }
  }
}
