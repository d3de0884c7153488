import type { GLTF } from '@gltf-transform/core';
import type { Description, PrimitiveEntry } from './description';

/** What is read of a triangle's corners: where they are, and how they look. */
const READ = ['POSITION', 'NORMAL', 'TEXCOORD_0', 'TEXCOORD_1', 'COLOR_0', 'JOINTS_0', 'WEIGHTS_0'];

/** Ways to draw a primitive that make triangles: a list, a strip, a fan. */
export const makesTriangles = ({ mode }: PrimitiveEntry): boolean => mode >= 4;

const readOnly = (attributes: Record<string, number>): Record<string, number> =>
  Object.fromEntries(Object.entries(attributes).filter(([word]) => READ.includes(word)));

/** A description that is down to what is read, and which of its lists of numbers that takes. */
export interface Trimmed {
  readonly description: Description;
  readonly accessors: ReadonlySet<number>;
}

/** Takes everything out of a description that the roof does not need, so that it is not unpacked either. */
export function trimmed(found: Description): Trimmed {
  const meshes = found.meshes.map((mesh) => ({
    ...mesh,
    primitives: mesh.primitives.map((primitive) => {
      const packed = primitive.extensions?.KHR_draco_mesh_compression;
      return {
        ...primitive,
        attributes: readOnly(primitive.attributes),
        ...(packed
          ? {
              extensions: {
                KHR_draco_mesh_compression: { ...packed, attributes: readOnly(packed.attributes) },
              },
            }
          : {}),
      };
    }),
  }));
  const accessors = new Set<number>();
  for (const { primitives } of meshes) {
    for (const primitive of primitives) {
      if (!makesTriangles(primitive)) continue;
      if (primitive.indices !== undefined) accessors.add(primitive.indices);
      for (const accessor of Object.values(primitive.attributes)) accessors.add(accessor);
    }
  }
  for (const { inverseBindMatrices } of found.skins) {
    if (inverseBindMatrices !== undefined) accessors.add(inverseBindMatrices);
  }
  for (const { extensions } of found.nodes) {
    for (const accessor of Object.values(extensions?.EXT_mesh_gpu_instancing?.attributes ?? {})) {
      accessors.add(accessor);
    }
  }
  return { description: { ...found, meshes }, accessors };
}

/** Says whether any triangles of a description are packed by Draco. */
export const isDraco = ({ meshes }: Description): boolean =>
  meshes.some(({ primitives }) => primitives.some((each) => each.extensions?.KHR_draco_mesh_compression));

/** A list of numbers that nobody reads, in place of one that might be huge. */
const NO_NUMBERS: GLTF.IAccessor = { componentType: 5126, count: 1, type: 'SCALAR' };

/**
 * The description for the library that unpacks it: triangles and numbers alone. Scenes, nodes and pictures are read
 * here, and lists of numbers that nobody asks for are left out.
 */
export function forUnpacking({ description, accessors }: Trimmed): GLTF.IGLTF {
  const { asset, buffers, bufferViews, meshes } = description;
  return {
    asset: { version: asset.version },
    extensionsUsed: [
      'KHR_mesh_quantization',
      'EXT_meshopt_compression',
      ...(isDraco(description) ? ['KHR_draco_mesh_compression'] : []),
    ],
    buffers: buffers.map(({ byteLength, uri, extensions }) => ({
      byteLength,
      ...(uri === undefined ? {} : { uri }),
      ...(typeof extensions === 'object' && extensions !== null ? { extensions: { ...extensions } } : {}),
    })),
    bufferViews: bufferViews.map(({ byteStride, extensions, ...view }) => ({
      ...view,
      ...(byteStride === undefined ? {} : { byteStride }),
      ...(extensions?.EXT_meshopt_compression
        ? { extensions: { EXT_meshopt_compression: extensions.EXT_meshopt_compression } }
        : {}),
    })),
    accessors: description.accessors.map((entry, index): GLTF.IAccessor => {
      if (!accessors.has(index)) return NO_NUMBERS;
      const { bufferView, normalized, sparse, ...own } = entry;
      return {
        ...own,
        ...(bufferView === undefined ? {} : { bufferView }),
        ...(normalized === undefined ? {} : { normalized }),
        ...(sparse === undefined ? {} : { sparse }),
      };
    }),
    meshes: meshes.map(({ name, primitives }) => ({
      name,
      primitives: primitives.filter(makesTriangles).map(({ attributes, indices, extensions }) => ({
        attributes,
        mode: 4,
        ...(indices === undefined ? {} : { indices }),
        ...(extensions?.KHR_draco_mesh_compression
          ? { extensions: { KHR_draco_mesh_compression: extensions.KHR_draco_mesh_compression } }
          : {}),
      })),
    })),
  };
}
