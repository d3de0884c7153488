import { type PerspectiveCamera, Vector3 } from 'three';
import type { Vec3 } from '../../core/form/build/vector';
import type { Ray } from '../../core/sight/rays';

/** A place in the pane, CSS pixels from its upper left. */
export type Pixel = readonly [number, number];

const scratch = new Vector3();

/** How a pane shows the world through a camera: from pixels to rays, and from places to pixels. */
export class WalkView {
  constructor(
    private readonly camera: PerspectiveCamera,
    readonly width: number,
    readonly height: number,
  ) {
    camera.updateMatrixWorld();
  }

  get eye(): Vec3 {
    const { x, y, z } = this.camera.position;
    return [x, y, z];
  }

  /** The way that a pixel looks; the direction is a unit vector, so distances along it are metres. */
  rayAt([x, y]: Pixel): Ray {
    const { width, height, camera, eye } = this;
    scratch.set((2 * x) / width - 1, 1 - (2 * y) / height, 0.5).unproject(camera);
    scratch.sub(camera.position).normalize();
    return { origin: eye, direction: [scratch.x, scratch.y, scratch.z] };
  }

  /** How far a place lies before the eye along its axis, metres; negative behind it. */
  depthOf([x, y, z]: Vec3): number {
    return -scratch.set(x, y, z).applyMatrix4(this.camera.matrixWorldInverse).z;
  }

  /** Where a place appears; null behind the eye, and beside it. */
  pixelOf(place: Vec3): Pixel | null {
    if (this.depthOf(place) < this.camera.near) return null;
    return this.flat(place);
  }

  /** A straight line as it appears, cut where it passes behind the eye; null when all of it lies there. */
  segmentOf(from: Vec3, to: Vec3): readonly [Pixel, Pixel] | null {
    const { near } = this.camera;
    const [a, b] = [this.depthOf(from) - near, this.depthOf(to) - near];
    if (a <= 0 && b <= 0) return null;
    const cut = (behind: Vec3, before: Vec3, share: number): Vec3 => [
      behind[0] + (before[0] - behind[0]) * share,
      behind[1] + (before[1] - behind[1]) * share,
      behind[2] + (before[2] - behind[2]) * share,
    ];
    const start = a < 0 ? cut(from, to, a / (a - b)) : from;
    const end = b < 0 ? cut(to, from, b / (b - a)) : to;
    return [this.flat(start), this.flat(end)];
  }

  /** What one pixel is wide at a place, metres. */
  metresPerPixelAt(place: Vec3): number {
    return this.widthAtOne * Math.max(this.camera.near, this.depthOf(place));
  }

  /** What one pixel is wide one metre before the eye, metres. */
  get widthAtOne(): number {
    return (2 * Math.tan((this.camera.fov * Math.PI) / 360)) / this.height;
  }

  private flat([x, y, z]: Vec3): Pixel {
    scratch.set(x, y, z).project(this.camera);
    return [((scratch.x + 1) / 2) * this.width, ((1 - scratch.y) / 2) * this.height];
  }
}
