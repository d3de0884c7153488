import { Box3, BufferAttribute, BufferGeometry, Mesh, Sphere } from 'three';
import type { PlacedPart } from '../../src/core/form/types';

/** Parts as three has them, each with the box and the sphere that its ray caster asks first. */
export const meshesOf = (
  parts: readonly Pick<PlacedPart, 'shape' | 'worldFromPart'>[],
): readonly (Mesh | null)[] =>
  parts.map(({ shape, worldFromPart: m }) => {
    if (shape.openness !== null || shape.indices.length === 0) return null;
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new BufferAttribute(shape.positions, 3));
    geometry.setIndex(new BufferAttribute(shape.indices, 1));
    geometry.boundingBox = new Box3().setFromBufferAttribute(new BufferAttribute(shape.positions, 3));
    geometry.boundingSphere = geometry.boundingBox.getBoundingSphere(new Sphere());
    const mesh = new Mesh(geometry);
    if (m) {
      mesh.matrixAutoUpdate = false;
      mesh.matrix.set(m[0], m[1], m[2], m[3], m[4], m[5], m[6], m[7], m[8], m[9], m[10], m[11], 0, 0, 0, 1);
    }
    mesh.updateMatrixWorld(true);
    return mesh;
  });
