import {
  BufferAttribute,
  BufferGeometry,
  DataTexture,
  FloatType,
  Matrix4,
  RGBAFormat,
  Skeleton,
  SkinnedMesh,
  Sphere,
} from 'three';
import type { PartShape } from '../../core/form/types';
import type { Batch } from './batches';
import { setToRows } from './rows';

/** Four texels hold the motion of a part. */
const TEXELS_A_PART = 4;
const [STILL, motion] = [new Matrix4(), new Matrix4()];
const ball = new Sphere();

/** The motions of parts, written by whoever poses them: there are no bones to follow. */
class Motions extends Skeleton {
  constructor(parts: number) {
    super([]);
    const side = Math.max(4, Math.ceil(Math.sqrt(parts * TEXELS_A_PART) / 4) * 4);
    this.boneMatrices = new Float32Array(side * side * 4);
    this.boneTexture = new DataTexture(this.boneMatrices, side, side, RGBAFormat, FloatType);
  }

  override update(): void {}
}

/**
 * Parts of somebody that look alike and move each by itself, drawn as one: every corner follows the motion of its part,
 * on the card. A figure of thirty parts is so some ten draw calls in each view and each shadow.
 */
export class Jointed extends SkinnedMesh {
  private shapes: readonly (readonly PartShape[])[] = [];
  private balls: readonly Sphere[] = [];

  constructor() {
    super();
    this.matrixAutoUpdate = false;
    this.boundingSphere = new Sphere();
  }

  /** Shows other parts, where they are others; true when they were. */
  show(batches: readonly Batch[], geometryOf: (shapes: readonly PartShape[]) => BufferGeometry): boolean {
    if (isSame(this.shapes, batches)) return false;
    this.shapes = batches.map(({ shapes }) => shapes);
    const geometries = this.shapes.map(geometryOf);
    this.balls = geometries.map(({ boundingSphere }) => boundingSphere?.clone() ?? new Sphere());
    this.geometry.dispose();
    this.geometry = joined(geometries);
    this.skeleton?.dispose();
    this.bind(new Motions(batches.length), STILL);
    return true;
  }

  /** Moves the parts; true when any has moved. */
  place(batches: readonly Batch[]): boolean {
    const { boneMatrices, boneTexture } = this.skeleton;
    if (!boneMatrices || !boneTexture) return false;
    let moved = false;
    this.boundingSphere?.makeEmpty();
    batches.forEach(({ worldFromPart }, part) => {
      setToRows(motion, worldFromPart);
      if (motion.elements.some((value, k) => Math.fround(value) !== boneMatrices[part * 16 + k])) {
        motion.toArray(boneMatrices, part * 16);
        moved = true;
      }
      this.boundingSphere?.union(ball.copy(this.balls[part]).applyMatrix4(motion));
    });
    if (moved) boneTexture.needsUpdate = true;
    return moved;
  }

  /** Gives back what it holds on the card. */
  giveBack(): void {
    this.geometry.dispose();
    this.skeleton?.dispose();
  }
}

const isSame = (shapes: readonly (readonly PartShape[])[], batches: readonly Batch[]): boolean =>
  shapes.length === batches.length &&
  batches.every(
    (batch, k) =>
      batch.shapes.length === shapes[k].length && batch.shapes.every((shape, j) => shape === shapes[k][j]),
  );

/** Corners of all, each with the number of its part. */
function joined(geometries: readonly BufferGeometry[]): BufferGeometry {
  const counts = geometries.map(({ attributes }) => attributes.position.count);
  const corners = counts.reduce((sum, count) => sum + count, 0);
  const whole = new BufferGeometry();
  for (const name of ['position', 'normal']) {
    const values = new Float32Array(corners * 3);
    let at = 0;
    for (const { attributes } of geometries) {
      values.set(attributes[name].array, at);
      at += attributes[name].count * 3;
    }
    whole.setAttribute(name, new BufferAttribute(values, 3));
  }
  const parts = new Uint8Array(corners * 4);
  const weights = new Uint8Array(corners * 4);
  let corner = 0;
  counts.forEach((count, part) => {
    for (const end = corner + count; corner < end; corner += 1) {
      parts[corner * 4] = part;
      weights[corner * 4] = 255;
    }
  });
  whole.setAttribute('skinIndex', new BufferAttribute(parts, 4));
  whole.setAttribute('skinWeight', new BufferAttribute(weights, 4, true));
  return whole;
}
