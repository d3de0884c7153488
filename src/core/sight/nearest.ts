import { type Instant, isSame } from './instant';
import { leastOutside, type Outside, outsideOf } from './margin';
import { type Interval, mostApproach } from './sweep';

/** How far outside the frame an item is at its nearest, and when. */
export interface Nearest {
  readonly outside: Outside;
  readonly frame: number;
}

/** Inside by less than any sample and any ray: at the frame line, to all intents. */
const AT_THE_LINE: Outside = { metres: 0, frameWidths: 0, edge: 'right' };

/** The nearest so far, and who is asked next. */
class Search {
  best: Nearest | null = null;

  constructor(
    private readonly item: number,
    private readonly at: (frame: number) => Instant,
  ) {}

  get metres(): number {
    return this.best?.outside.metres ?? Infinity;
  }

  /** The distance at a frame, Infinity behind the camera. */
  ask(frame: number): number {
    const { stage, camera } = this.at(frame);
    const outside = outsideOf(stage, this.item, camera);
    if (outside === null) return Infinity;
    const found =
      outside === 'inside' ? { ...AT_THE_LINE, edge: this.best?.outside.edge ?? 'right' } : outside;
    const isEarlier = found.metres === this.metres && frame < (this.best?.frame ?? Infinity);
    if (found.metres < this.metres || isEarlier) this.best = { outside: found, frame };
    return found.metres;
  }

  /** A lower bound of the distance at a frame. */
  bound(frame: number): number {
    const { stage, camera } = this.at(frame);
    return leastOutside(stage, this.item, camera);
  }
}

/**
 * The least distance outside the frame over a span, of an item that is never inside; null when it is always behind the
 * camera. Measured is what may be the least: first where the boxes around its parts come nearest, then the frames
 * asked in full that boxes do not rule out, then all frames between two of those from which it may come nearer still.
 * `coarse`: the frames asked in full; `intervals`: what happens from each to the next.
 */
export function nearestOf(
  item: number,
  coarse: readonly number[],
  at: (frame: number) => Instant,
  intervals: readonly Interval[],
): Nearest | null {
  const search = new Search(item, at);
  const bounds = coarse.map((frame) => search.bound(frame));
  search.ask(coarse[bounds.indexOf(Math.min(...bounds))]);
  const least: number[] = [];
  for (const [index, frame] of coarse.entries()) {
    const isStill = index > 0 && isSame(at(coarse[index - 1]), at(frame));
    least.push(
      isStill ? least[index - 1] : bounds[index] > search.metres ? bounds[index] : search.ask(frame),
    );
  }
  const between = intervals
    .map((interval, index) => ({ index, bound: boundBetween(least, index, mostApproach(item, interval)) }))
    .sort((a, b) => a.bound - b.bound || a.index - b.index);
  for (const { index, bound } of between) {
    if (bound >= search.metres) break;
    for (let frame = coarse[index] + 1; frame < coarse[index + 1]; frame += 1)
      if (search.bound(frame) < search.metres) search.ask(frame);
  }
  return search.best;
}

/** Motion counts from an interval's first frame, so that from the last one to any other it may be twice that. */
function boundBetween(least: readonly number[], index: number, approach: number): number {
  const [from, to] = [least[index], least[index + 1]];
  // From behind the camera it may come into the picture anywhere.
  if (from === Infinity || to === Infinity) return from === to && approach < Infinity ? Infinity : 0;
  return Math.max(from - approach, to - 2 * approach);
}
