/** How much longer frames may get, on average, for the sake of thumbnails: this share, where frames come late anyway. */
const MOST_SHARE = 0.05;
/** Fewer frames than this a second are no play, milliseconds. */
const LONGEST_GAP = 100;
/** A display's period, milliseconds, and what still counts as keeping to it. */
const PERIOD = 1000 / 60;
const IN_TIME = 1.06;
/** Of a period that is kept to, thumbnails leave this much alone. */
const SPARE_SHARE = 0.2;
/** Where a thumbnail does not fit into a period, and where pictures are drawn coarser to keep to it, one in so many frames. */
const SELDOM = 30;
/** The first thumbnail readies the shaders; what queues up behind that is past after so many frames. */
const SETTLING_FRAMES = 4;
/** Older measurements count for so much against a new one: less where it has become quicker. */
const MEMORY = 0.8;
const MEMORY_OF_SLOWER = 0.4;

function blended(before: number | null, now: number): number {
  if (before === null) return now;
  const memory = now < before ? MEMORY_OF_SLOWER : MEMORY;
  return before * memory + now * (1 - memory);
}

/** When, while a move plays, there is time for one of the thumbnails. All times are milliseconds. */
export class ThumbTurns {
  private last: number | null = null;
  /** From frame to frame where no thumbnail was printed, and where one was; and what one takes of the processor. */
  private gap: number | null = null;
  private printedGap: number | null = null;
  private cost: number | null = null;
  private hasPrinted = false;
  private waited = 0;

  /**
   * Tells of a frame that began at a time and has taken so long until now, and whether its pictures are strained to be in
   * time; says whether a thumbnail may be printed in it.
   */
  frame(atMilliseconds: number, takenMilliseconds: number, isStrained = false): boolean {
    if (this.last !== null) this.heed(atMilliseconds - this.last);
    this.last = atMilliseconds;
    this.waited += 1;
    if (this.gap === null) return false;
    if (this.cost === null) return !this.hasPrinted || this.waited >= SETTLING_FRAMES;
    // What the card takes is only seen by the frame that follows.
    const onCard = this.printedGap === null ? 0 : this.printedGap - this.gap;
    const fits = framesBetween(this.gap, Math.max(this.cost, onCard), takenMilliseconds);
    return this.waited >= (isStrained ? Math.max(SELDOM, fits) : fits);
  }

  /** Tells how long a thumbnail took. The first says nothing of those after it. */
  printed(milliseconds: number): void {
    if (this.hasPrinted) this.cost = blended(this.cost, milliseconds);
    this.hasPrinted = true;
    this.waited = 0;
  }

  /** What plays has stopped: the next frame follows on nothing. */
  rest(): void {
    this.last = null;
    this.waited = 0;
  }

  private heed(gap: number): void {
    if (this.waited > 0) this.gap = blended(this.gap, gap);
    else if (this.cost !== null) this.printedGap = blended(this.printedGap, gap);
  }
}

/** One thumbnail in how many frames keeps the display's rate, or the rate that there is. */
export function framesBetween(gap: number, cost: number, taken: number): number {
  if (gap <= PERIOD * IN_TIME) return taken + cost <= PERIOD * (1 - SPARE_SHARE) ? 1 : SELDOM;
  const bySlowing = cost / (MOST_SHARE * gap);
  const byRate = gap < LONGEST_GAP ? cost / (LONGEST_GAP - gap) : 0;
  return Math.max(1, Math.ceil(Math.max(bySlowing, byRate)));
}
