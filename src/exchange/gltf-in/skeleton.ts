import type { Document, Primitive } from '@gltf-transform/core';
import type { Description } from './description';
import { after, IDENTITY, type Matrix } from './standings';
import { valuesOf } from './unpack';

/** The motion that each joint of a skin gives to the corners that hang on it, as the file stands. */
export type Skeleton = readonly Matrix[];

/** A skin's joints where the file's nodes put them: its rest, since animations are not played. */
export function skeletonOf(
  { skins }: Description,
  document: Document,
  skin: number,
  world: ReadonlyMap<number, Matrix>,
): Skeleton {
  const { joints, inverseBindMatrices } = skins[skin];
  const accessor = document.getRoot().listAccessors()[inverseBindMatrices ?? -1];
  const bind = accessor ? valuesOf(accessor) : null;
  return joints.map((joint, index) => {
    const own = bind ? Array.from({ length: 16 }, (_, k) => bind[index * 16 + k] ?? IDENTITY[k]) : IDENTITY;
    return after(world.get(joint) ?? IDENTITY, own);
  });
}

/** The motion of each corner of a primitive that hangs on a skin: its joints' motions, weighted. */
export function bent(primitive: Primitive, skeleton: Skeleton): ((corner: number) => Matrix) | null {
  const [joint, weight] = [primitive.getAttribute('JOINTS_0'), primitive.getAttribute('WEIGHTS_0')];
  if (!joint || !weight || joint.getCount() !== weight.getCount()) return null;
  const [joints, weights] = [valuesOf(joint), valuesOf(weight)];
  return (corner) => {
    const sum = new Array<number>(16).fill(0);
    for (let k = corner * 4; k < corner * 4 + 4; k += 1) {
      const m = skeleton[joints[k]];
      if (m) for (let c = 0; c < 16; c += 1) sum[c] += weights[k] * m[c];
    }
    return sum;
  };
}
