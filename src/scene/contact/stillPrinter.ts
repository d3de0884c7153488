import type { WebGLRenderer } from 'three';
import { frameShapeOf } from '../../core/optics/camera';
import type { Still } from '../../desk/contactStills';
import type { Quality } from '../drive/quality';
import { ThumbPrint } from '../drive/thumbs';
import type { Development } from '../picture/develop';
import type { Painter } from '../picture/painter';
import { ViewTargets } from '../picture/targets';
import { type Piece, piecesOf } from './pieces';

/** The longest side that is kept of a piece: with a graphics card, and where each pixel takes its time. */
const LONGEST_SIDE = { full: 2000, light: 1400 };

/** Prints pictures of any size onto canvases, piece by piece, so that neither the card's memory nor the page suffers. */
export class StillPrinter {
  private at: { readonly still: Still; readonly pieces: readonly (Piece | null)[]; next: number } | null =
    null;
  private targets: ViewTargets | null = null;
  private readonly copying = new ThumbPrint();
  private readonly scratch = document.createElement('canvas');

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly painter: Painter,
  ) {}

  /** Prints the next piece; true when that was the last of its picture. */
  print(
    still: Still,
    quality: Quality,
    paint: (targets: ViewTargets, piece: Piece | null) => Development,
  ): boolean {
    if (this.at?.still !== still) this.at = { still, pieces: this.piecesFor(still, quality), next: 0 };
    const { pieces, next } = this.at;
    const piece = pieces[next];
    const { width, height } = piece ? piece.drawn : this.wholeSize(still);
    const development = paint(this.targetsOf(width, height, quality), piece);
    this.painter.print(this.copying.targetOf({ width, height }), development);
    if (!piece) this.copying.copyTo(still.canvas, this.renderer);
    else {
      this.copying.copyTo(this.scratch, this.renderer);
      if (next === 0) [still.canvas.width, still.canvas.height] = [still.width, still.height];
      const { kept, drawn } = piece;
      const from = [kept.left - drawn.left, kept.top - drawn.top, kept.width, kept.height] as const;
      still.canvas
        .getContext('2d')
        ?.drawImage(this.scratch, ...from, kept.left, kept.top, kept.width, kept.height);
    }
    this.at.next += 1;
    if (this.at.next < pieces.length) return false;
    this.at = null;
    if (piece) this.giveBack();
    return true;
  }

  dispose(): void {
    this.giveBack();
    this.copying.dispose();
  }

  /** A lens that bends is drawn in one: what a piece of its picture needs of the straight one is no rectangle. */
  private piecesFor({ plan, setup, width, height }: Still, quality: Quality): readonly (Piece | null)[] {
    const side = quality.lens ? LONGEST_SIDE.full : LONGEST_SIDE.light;
    const pieces = piecesOf(width, height, Math.min(side, this.renderer.capabilities.maxTextureSize / 2));
    return pieces.length === 1 || frameShapeOf(plan, setup).distortion ? [null] : pieces;
  }

  /** As asked, or as large as the card can have it. */
  private wholeSize({ width, height }: Still): { readonly width: number; readonly height: number } {
    const share = Math.min(1, this.renderer.capabilities.maxTextureSize / Math.max(width, height));
    return { width: Math.round(width * share), height: Math.round(height * share) };
  }

  private targetsOf(width: number, height: number, { samples, mirrorDivisor }: Quality): ViewTargets {
    const sizes = { width, height, samples, mirrorDivisor };
    if (this.targets?.fits(sizes)) return this.targets;
    this.targets?.dispose();
    this.targets = new ViewTargets(sizes);
    return this.targets;
  }

  private giveBack(): void {
    this.targets?.dispose();
    this.targets = null;
    this.copying.targetOf({ width: 2, height: 2 });
  }
}
