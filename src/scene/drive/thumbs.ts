import { RGBAFormat, UnsignedByteType, type WebGLRenderer, WebGLRenderTarget } from 'three';
import type { Pane } from '../picture/painter';

/** Pixels of a thumbnail for each of its CSS pixels, at rest and while it plays; and its size where the page gives it none. */
const PIXELS_PER_CSS = 2;
const PIXELS_PER_CSS_PLAYING = 1;
const SIZE = { width: 176, height: 74 };

export interface ThumbSize {
  readonly width: number;
  readonly height: number;
}

export function thumbSize(canvas: HTMLCanvasElement, isPlaying: boolean): ThumbSize {
  const ratio = isPlaying ? PIXELS_PER_CSS_PLAYING : PIXELS_PER_CSS;
  const width = canvas.clientWidth || SIZE.width;
  const height = canvas.clientHeight || SIZE.height;
  return { width: Math.round(width * ratio), height: Math.round(height * ratio) };
}

/** A developed thumbnail on its way from the card to a 2D canvas. */
export class ThumbPrint {
  private target = new WebGLRenderTarget(2, 2, {
    format: RGBAFormat,
    type: UnsignedByteType,
    depthBuffer: false,
  });
  private bytes = new Uint8Array(0);

  targetOf({ width, height }: ThumbSize): WebGLRenderTarget {
    if (this.target.width !== width || this.target.height !== height) this.target.setSize(width, height);
    return this.target;
  }

  /** Copies the print onto the canvas, right way up. */
  copyTo(canvas: HTMLCanvasElement, renderer: WebGLRenderer): void {
    const { width, height } = this.target;
    const length = width * height * 4;
    if (this.bytes.length !== length) this.bytes = new Uint8Array(length);
    renderer.readRenderTargetPixels(this.target, 0, 0, width, height, this.bytes);
    const context = contextOf(canvas, { width, height });
    if (!context) return;
    const image = context.createImageData(width, height);
    const row = width * 4;
    // Rows come from the card from the lowest up.
    for (let y = 0; y < height; y += 1) {
      image.data.set(this.bytes.subarray((height - 1 - y) * row, (height - y) * row), y * row);
    }
    context.putImageData(image, 0, 0);
  }

  dispose(): void {
    this.target.dispose();
  }
}

/**
 * Copies what was just shown in a pane of the stage, in CSS pixels, onto a canvas, without taking it from the card: that
 * would make a playing move wait.
 */
export function copyShown(
  stage: HTMLCanvasElement,
  pane: Pane,
  canvas: HTMLCanvasElement,
  size: ThumbSize,
): void {
  const { width, height } = size;
  const ratio = stage.width / stage.clientWidth;
  const top = stage.height - (pane.y + pane.height) * ratio;
  contextOf(canvas, size)?.drawImage(
    stage,
    pane.x * ratio,
    top,
    pane.width * ratio,
    pane.height * ratio,
    0,
    0,
    width,
    height,
  );
}

function contextOf(canvas: HTMLCanvasElement, { width, height }: ThumbSize): CanvasRenderingContext2D | null {
  if (canvas.width !== width || canvas.height !== height) {
    canvas.width = width;
    canvas.height = height;
  }
  return canvas.getContext('2d');
}
