import type { LightShadow } from 'three';

/** How many of the shadows may be drawn for a painting: all of them, or so many in a frame of a move that plays. */
export interface ShadowTurn {
  /** The number of the frame: two paintings of one frame share what it may draw. */
  readonly frame: number;
  readonly most: number;
}

/**
 * Which lamps' shadows are drawn when. At rest all that are out of date are; while a move plays they take turns, since
 * each is the whole roof drawn once more, and as many pixels cost a small card as much as the picture itself.
 */
export class ShadowTurns {
  private readonly stale = new Set<LightShadow>();
  private readonly urgent = new Set<LightShadow>();
  private last: LightShadow | null = null;
  private frame: number | null = null;

  /** What stands on the roof has moved: all shadows are out of date. */
  age(shadows: readonly LightShadow[]): void {
    for (const shadow of shadows) this.stale.add(shadow);
  }

  /** A lamp has moved, and its shadow with it: that cannot wait. */
  hurry(shadows: readonly LightShadow[]): void {
    for (const shadow of shadows) this.urgent.add(shadow);
  }

  /**
   * Marks those of all lamps' shadows that are drawn next; true when there are any. Without a turn, those are all that
   * are out of date.
   */
  mark(all: readonly LightShadow[], turn: ShadowTurn | null): boolean {
    const due = turn === null ? all.filter((each) => this.isDue(each)) : this.inTurn(all, turn);
    for (const shadow of due) {
      shadow.needsUpdate = true;
      this.stale.delete(shadow);
      this.urgent.delete(shadow);
    }
    return due.length > 0;
  }

  private isDue(shadow: LightShadow): boolean {
    return this.stale.has(shadow) || this.mustNow(shadow);
  }

  private mustNow(shadow: LightShadow): boolean {
    return this.urgent.has(shadow) || shadow.map === null;
  }

  private inTurn(all: readonly LightShadow[], { frame, most }: ShadowTurn): readonly LightShadow[] {
    const now = all.filter((each) => this.mustNow(each));
    if (frame === this.frame) return now;
    this.frame = frame;
    const from = this.last === null ? 0 : all.indexOf(this.last) + 1;
    const waiting = [...all.slice(from), ...all.slice(0, from)].filter(
      (each) => this.stale.has(each) && !this.mustNow(each),
    );
    const chosen = waiting.slice(0, Math.max(1, most - now.length));
    this.last = chosen.at(-1) ?? this.last;
    return [...now, ...chosen];
  }
}
