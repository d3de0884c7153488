import { type Matrix4, PerspectiveCamera, Plane, Vector3, Vector4 } from 'three';
import type { CameraPose, FrameShape } from '../../core/optics/types';

/** Nearest and farthest that a setup's picture holds, metres: a flag at the matte box, and the end of the skyline. */
const NEAR_METRES = 0.1;
const FAR_METRES = 4000;

const right = new Vector3();
const up = new Vector3();
const back = new Vector3();
const plane = new Plane();
const clip = new Vector4();
const corner = new Vector4();

/**
 * A camera whose frame is given by tangents of half its angles, as core/optics computes them, and whose pose is
 * given by axes. three rebuilds a projection from an angle and an aspect whenever it likes: here it gets ours.
 */
export class FrameCamera extends PerspectiveCamera {
  private halves: readonly [number, number] | undefined;
  private shift: readonly [number, number] = [0, 0];
  private clipHeight: number | undefined;

  constructor() {
    super(50, 1, NEAR_METRES, FAR_METRES);
    this.matrixAutoUpdate = false;
    this.setHalves(1, 1);
  }

  get tanHalfWidth(): number {
    return (this.halves ?? [1, 1])[0];
  }

  get tanHalfHeight(): number {
    return (this.halves ?? [1, 1])[1];
  }

  /** Tangents of half the angles across and up; `shift` is how many of these halves a piece of a picture lies off its middle. */
  setHalves(
    tanHalfWidth: number,
    tanHalfHeight: number,
    shift: readonly [right: number, up: number] = [0, 0],
  ): this {
    this.halves = [tanHalfWidth, tanHalfHeight];
    this.shift = shift;
    this.updateProjectionMatrix();
    return this;
  }

  /** Takes the delivered frame, widened by `overscan` along both axes. */
  setFrame(frame: FrameShape, overscan: number): this {
    return this.setHalves(frame.tanHalfWidth * overscan, frame.tanHalfHeight * overscan);
  }

  setPose(pose: CameraPose): this {
    right.fromArray(pose.right);
    up.fromArray(pose.up);
    back.fromArray(pose.forward).negate();
    this.matrix.makeBasis(right, up, back).setPosition(...pose.position);
    this.matrix.decompose(this.position, this.quaternion, this.scale);
    this.updateMatrixWorld(true);
    return this;
  }

  /**
   * Becomes the camera below the level mirror at `height` that sees what the mirror shows to `source`:
   * same frame, pose mirrored (and turned over left to right, to stay a rotation), and nothing from below the mirror.
   */
  mirror(source: PerspectiveCamera, height: number): this {
    const elements = source.matrixWorld.elements;
    const mirrored = (at: number, target: Vector3) =>
      target.set(elements[at], -elements[at + 1], elements[at + 2]);
    this.matrix.makeBasis(mirrored(0, right).negate(), mirrored(4, up), mirrored(8, back));
    this.matrix.setPosition(elements[12], 2 * height - elements[13], elements[14]);
    this.matrix.decompose(this.position, this.quaternion, this.scale);
    this.updateMatrixWorld(true);
    const { elements: p } = source.projectionMatrix;
    this.clipHeight = height;
    return this.setHalves(1 / p[0], 1 / p[5], [-p[8], p[9]]);
  }

  override updateProjectionMatrix(): void {
    const [x, y] = this.halves ?? [1, 1];
    // The first call comes from the class above, before this one has any fields.
    const [right, up] = this.shift ?? [0, 0];
    this.projectionMatrix.makePerspective(
      (right - 1) * x * this.near,
      (right + 1) * x * this.near,
      (up + 1) * y * this.near,
      (up - 1) * y * this.near,
      this.near,
      this.far,
      this.coordinateSystem,
    );
    if (this.clipHeight !== undefined)
      clipBelow(this.projectionMatrix, this.matrixWorldInverse, this.clipHeight);
    this.projectionMatrixInverse.copy(this.projectionMatrix).invert();
  }
}

/** Moves the near plane into the level plane at `height`, keeping what is above it (Lengyel's oblique near plane). */
function clipBelow(projection: Matrix4, viewFromWorld: Matrix4, height: number): void {
  plane.set(up.set(0, 1, 0), -height).applyMatrix4(viewFromWorld);
  clip.set(plane.normal.x, plane.normal.y, plane.normal.z, plane.constant);
  const p = projection.elements;
  corner.set((Math.sign(clip.x) + p[8]) / p[0], (Math.sign(clip.y) + p[9]) / p[5], -1, (1 + p[10]) / p[14]);
  clip.multiplyScalar(2 / clip.dot(corner));
  p[2] = clip.x;
  p[6] = clip.y;
  p[10] = clip.z + 1;
  p[14] = clip.w;
}
