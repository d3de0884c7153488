import {
  DepthTexture,
  HalfFloatType,
  LinearFilter,
  LinearMipmapLinearFilter,
  NearestFilter,
  UnsignedIntType,
  WebGLRenderTarget,
} from 'three';
import { FrameCamera } from '../cameras/frameCamera';

export interface TargetSizes {
  readonly width: number;
  readonly height: number;
  /** Samples for each pixel's edges; 0 for none. */
  readonly samples: number;
  /** The mirror's picture is this many times smaller than the view. */
  readonly mirrorDivisor: number;
}

/**
 * What one view is drawn into, in cd/m² and half floats: the view itself with its depths, the mirror's picture with
 * its levels, and the workings of the lens, of which the card holds only what is drawn. They are kept until the view
 * is drawn anew, so that another view's change costs this one nothing.
 */
export class ViewTargets {
  readonly view: WebGLRenderTarget;
  readonly mirror: WebGLRenderTarget;
  /** From where the mirror's picture was drawn, and of which level; null before it was. */
  readonly mirrorCamera = new FrameCamera();
  mirroredHeight: number | null = null;
  /** Half size: colour, and in alpha the signed blur. */
  readonly half: WebGLRenderTarget;
  /** The same without what is scattered as discs. */
  readonly base: WebGLRenderTarget;
  readonly blurred: WebGLRenderTarget;
  /** An eighth of the half size: how far the foreground's blur reaches. */
  readonly reach: WebGLRenderTarget;
  /** As the lens draws the view: blurred, with its discs and streaks. */
  readonly lensed: WebGLRenderTarget;
  /** A quarter of the view, with its levels, that stray light is taken from. */
  readonly glow: WebGLRenderTarget;
  /** The stray light, a quarter of the view. */
  readonly veil: WebGLRenderTarget;

  constructor(readonly sizes: TargetSizes) {
    const { width, height, samples } = sizes;
    this.view = target(width, height, { samples, depth: true, mipmaps: false });
    const divided = (by: number) =>
      [Math.max(2, Math.ceil(width / by)), Math.max(2, Math.ceil(height / by))] as const;
    this.mirror = target(...divided(sizes.mirrorDivisor), { samples: 0, depth: true, mipmaps: true });
    this.half = target(...divided(2), { samples: 0, depth: false, mipmaps: true });
    const plain = { samples: 0, depth: false, mipmaps: false };
    this.base = target(...divided(2), { ...plain, mipmaps: true });
    this.blurred = target(...divided(2), plain);
    this.reach = target(...divided(16), plain);
    this.lensed = target(width, height, plain);
    this.glow = target(...divided(4), { ...plain, mipmaps: true });
    this.veil = target(...divided(4), plain);
  }

  fits(sizes: TargetSizes): boolean {
    return (
      sizes.width === this.sizes.width &&
      sizes.height === this.sizes.height &&
      sizes.samples === this.sizes.samples &&
      sizes.mirrorDivisor === this.sizes.mirrorDivisor
    );
  }

  dispose(): void {
    const { view, mirror, half, base, blurred, reach, lensed, glow, veil } = this;
    for (const each of [view, mirror, half, base, blurred, reach, lensed, glow, veil]) {
      each.depthTexture?.dispose();
      each.dispose();
    }
  }
}

function target(
  width: number,
  height: number,
  {
    samples,
    depth,
    mipmaps,
  }: { readonly samples: number; readonly depth: boolean; readonly mipmaps: boolean },
): WebGLRenderTarget {
  const made = new WebGLRenderTarget(width, height, {
    type: HalfFloatType,
    samples,
    depthBuffer: depth,
    generateMipmaps: mipmaps,
    minFilter: mipmaps ? LinearMipmapLinearFilter : LinearFilter,
    magFilter: LinearFilter,
  });
  if (depth) {
    const depths = new DepthTexture(width, height, UnsignedIntType);
    depths.minFilter = NearestFilter;
    depths.magFilter = NearestFilter;
    made.depthTexture = depths;
  }
  return made;
}
