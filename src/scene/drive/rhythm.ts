/** Shares of the full width and height that moving pictures are drawn at, from fine to coarse. */
const STEPS = [1, 0.84, 0.71, 0.59, 0.5] as const;
/** Frames that are looked at before anything is decided. */
const FRAMES = 12;
/** Slower than the display by this much, and pictures are drawn coarser. */
const LATE = 1.1;
/** The slowest display that is kept up with, and the longest gap that still belongs to a motion, milliseconds. */
const SLOWEST_PERIOD = 1000 / 60;
const BREAK = 250;
/** In time for so many frames, and the next finer step is tried again; twice as many after each time that it failed. */
const PATIENCE = 90;

/**
 * How fine moving pictures can be drawn so that they keep the display's rate: one step coarser whenever frames come
 * late, finer again once they have been in time for a while. What rests is drawn in full.
 */
export class Rhythm {
  private step = 0;
  private last: number | null = null;
  private readonly gaps: number[] = [];
  private inTime = 0;
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
    this.gaps.push(gap);
    if (this.gaps.length < FRAMES) return;
    // A mean, since one frame in three that comes late is seen; without the longest, which may be anything.
    const sum = this.gaps.reduce((total, each) => total + each, 0) - Math.max(...this.gaps);
    this.gaps.length = 0;
    if (sum / (FRAMES - 1) > SLOWEST_PERIOD * LATE) {
      if (this.inTime > 0 && this.inTime < FRAMES * 2) this.patience *= 2;
      this.inTime = 0;
      this.step = Math.min(STEPS.length - 1, this.step + 1);
      return;
    }
    this.inTime += FRAMES;
    if (this.step > 0 && this.inTime >= this.patience) {
      this.step -= 1;
      this.inTime = 1;
    }
  }
}
