/** Shares of the full width and height that moving pictures are drawn at, from fine to coarse. */
const STEPS = [1, 0.84, 0.71, 0.59, 0.5] as const;
/** Frames that are looked at before anything is decided; fewer where most are late, or a finer step is only tried. */
const FRAMES = 24;
const SOON = 4;
/** Slower than the display by this much on average, and pictures are drawn coarser; by so much, and soon. */
const LATE = 1.04;
const VERY_LATE = 1.4;
/** The fastest and slowest displays that are kept up with, and the longest gap that still belongs to a motion, milliseconds. */
const PERIODS = [1000 / 60, 1000 / 48] as const;
const BREAK = 250;
/** In time for so many frames, and the next finer step is tried again; so many times more after each time that it failed. */
const PATIENCE = 90;
const LEARNED = 4;

/**
 * How fine moving pictures can be drawn so that they keep the display's rate: one step coarser whenever frames come
 * late, finer again once they have been in time for a while. What rests is drawn in full.
 */
export class Rhythm {
  private step = 0;
  private last: number | null = null;
  private readonly gaps: number[] = [];
  private inTime = 0;
  private isTrying = false;
  private patience = PATIENCE;

  /**
   * Tells of a frame at a time in milliseconds, and whether something moves in it. Gives the share of the full width
   * and height that it should be drawn at, 0.5 to 1.
   */
  frame(milliseconds: number, isMoving: boolean): number {
    if (!isMoving) {
      this.last = null;
      this.gaps.length = 0;
      return 1;
    }
    const gap = this.last === null ? null : milliseconds - this.last;
    this.last = milliseconds;
    if (gap !== null && gap < BREAK) this.heed(gap);
    return STEPS[this.step];
  }

  private heed(gap: number): void {
    const { gaps } = this;
    gaps.push(gap);
    if (gaps.length < SOON) return;
    // A mean, since one frame in three that comes late is seen; without the longest, which may be anything.
    const sum = gaps.reduce((total, each) => total + each, 0) - Math.max(...gaps);
    const share = sum / (gaps.length - 1) / periodIn(gaps);
    if (share > VERY_LATE) this.coarser();
    else if (gaps.length >= FRAMES || this.isTrying) {
      if (share > LATE) this.coarser();
      else this.keepUp();
    }
  }

  private coarser(): void {
    if (this.isTrying) this.patience *= LEARNED;
    this.isTrying = false;
    this.inTime = 0;
    this.gaps.length = 0;
    this.step = Math.min(STEPS.length - 1, this.step + 1);
  }

  private keepUp(): void {
    this.inTime += this.gaps.length;
    this.gaps.length = 0;
    this.isTrying = false;
    if (this.step === 0 || this.inTime < this.patience) return;
    this.step -= 1;
    this.inTime = 0;
    this.isTrying = true;
  }
}

/** The display's period as the quickest of some frames shows it, milliseconds. */
const periodIn = (gaps: readonly number[]): number =>
  Math.min(PERIODS[1], Math.max(PERIODS[0], Math.min(...gaps)));
