import { RGBAFormat, UnsignedByteType, type WebGLRenderer, WebGLRenderTarget } from 'three';

/** Pixels of a thumbnail for each of its CSS pixels, and its size where the page gives it none. */
const PIXELS_PER_CSS = 2;
const SIZE = { width: 176, height: 74 };

export interface ThumbSize {
  readonly width: number;
  readonly height: number;
}

export function thumbSize(canvas: HTMLCanvasElement): ThumbSize {
  const width = canvas.clientWidth || SIZE.width;
  const height = canvas.clientHeight || SIZE.height;
  return { width: Math.round(width * PIXELS_PER_CSS), height: Math.round(height * PIXELS_PER_CSS) };
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
    const context = canvas.getContext('2d');
    if (!context) return;
    if (canvas.width !== width || canvas.height !== height) {
      canvas.width = width;
      canvas.height = height;
    }
    const image = context.createImageData(width, height);
    const row = width * 4;
    for (let y = 0; y < height; y += 1) {
      image.data.set(this.bytes.subarray((height - 1 - y) * row, (height - y) * row), y * row);
    }
    context.putImageData(image, 0, 0);
  }

  dispose(): void {
    this.target.dispose();
  }
}
