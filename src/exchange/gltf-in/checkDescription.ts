import { type AccessorEntry, type Description, shortened } from './description';
import { counted, ModelFault } from './modelFault';

/** What the reader understands of what a file may require. */
const UNDERSTOOD = new Set([
  'KHR_draco_mesh_compression',
  'EXT_meshopt_compression',
  'KHR_mesh_quantization',
  'KHR_texture_transform',
  'EXT_mesh_gpu_instancing',
  'EXT_texture_webp',
  'KHR_materials_unlit',
]);
/** What only changes how a surface looks: the triangles are read without it. */
const LOOKS_ONLY = /^(KHR_materials_|KHR_texture_|EXT_texture_|KHR_lights_|MSFT_texture_|EXT_lights_)/;

/** Corners in all attributes of the meshes that are read, and bytes that packed views may unpack to. */
const MOST_CORNERS = 60_000_000;
const MOST_UNPACKED_BYTES = 1024 ** 3;

const COMPONENT_BYTES: Readonly<Record<AccessorEntry['componentType'], number>> = {
  5120: 1,
  5121: 1,
  5122: 2,
  5123: 2,
  5125: 4,
  5126: 4,
};
const COMPONENTS: Readonly<Record<AccessorEntry['type'], number>> = {
  SCALAR: 1,
  VEC2: 2,
  VEC3: 3,
  VEC4: 4,
  MAT2: 4,
  MAT3: 9,
  MAT4: 16,
};

/**
 * Checks that a description keeps to itself: nothing outside the file, nothing beyond its buffers, no circle among its
 * nodes, and no more than can be read in bounded memory.
 *
 * @param accessors which of the accessors will be read
 * @throws ModelFault
 */
export function checkDescription(
  found: Description,
  binary: Uint8Array | null,
  accessors: ReadonlySet<number>,
): void {
  checkVersion(found);
  checkReferences(found);
  checkBuffers(found, binary);
  checkAccessors(found, accessors);
  checkNodes(found);
}

const broken = (what: string): ModelFault =>
  new ModelFault(`The description in the file contradicts itself: ${what}.`);

function checkVersion({ asset, extensionsRequired }: Description): void {
  if (!/^2(\.\d+)?$/.test(asset.version)) {
    throw new ModelFault(
      `The file is glTF version ${shortened(asset.version)}, expected 2.0. Save it anew as glTF 2.0.`,
    );
  }
  const strange = extensionsRequired.find((word) => !UNDERSTOOD.has(word) && !LOOKS_ONLY.test(word));
  if (strange !== undefined) {
    throw new ModelFault(
      `The file cannot be read without ${shortened(strange)}, which is not known here. Save it without that.`,
    );
  }
}

/** Anything that lies outside the file is refused, wherever it lies: nothing is ever fetched. */
function checkReferences({ buffers, images }: Description): void {
  for (const { uri } of [...buffers, ...images]) {
    if (uri === undefined || uri.startsWith('data:')) continue;
    throw new ModelFault(
      /^[a-z][a-z0-9+.-]*:|^\/\//i.test(uri)
        ? `The file takes a part of itself from the network (${shortened(uri)}), and nothing is fetched from there. Save the model with everything inside.`
        : `A part of the model lies in another file (${shortened(uri)}). Save the model as one GLB with everything inside.`,
    );
  }
}

const isFallback = (extensions: unknown): boolean =>
  typeof extensions === 'object' && extensions !== null && 'EXT_meshopt_compression' in extensions;

function checkBuffers({ buffers, bufferViews }: Description, binary: Uint8Array | null): void {
  buffers.forEach(({ uri, byteLength, extensions }, index) => {
    if (uri !== undefined || isFallback(extensions)) return;
    if (index > 0 || binary === null) throw broken(`buffer ${index} is nowhere`);
    if (byteLength > binary.length) {
      throw new ModelFault(
        `The file is cut short: its triangles should take ${counted(byteLength)} bytes and it has ${counted(binary.length)} for them.`,
      );
    }
  });
  let unpacked = 0;
  bufferViews.forEach((view, index) => {
    const packed = view.extensions?.EXT_meshopt_compression;
    const stretch = packed ?? view;
    const holder = buffers[stretch.buffer];
    if (!holder || (stretch.byteOffset ?? 0) + stretch.byteLength > holder.byteLength) {
      throw broken(`stretch ${index} of its bytes reaches beyond its buffer`);
    }
    unpacked += packed ? packed.count * packed.byteStride : view.byteLength;
  });
  if (unpacked > MOST_UNPACKED_BYTES) {
    throw new ModelFault(
      `The model unpacks to ${counted(unpacked)} bytes; at most ${counted(MOST_UNPACKED_BYTES)} are read. Save a smaller one.`,
    );
  }
}

function checkAccessors({ accessors, bufferViews }: Description, wanted: ReadonlySet<number>): void {
  let corners = 0;
  for (const index of wanted) {
    const entry = accessors[index];
    if (!entry) throw broken(`list ${index} of numbers is named and is not there`);
    corners += entry.count;
    if (corners > MOST_CORNERS) {
      throw new ModelFault(
        `The model says that it has more than ${counted(MOST_CORNERS)} corners and edges. Save a smaller one.`,
      );
    }
    const size = COMPONENT_BYTES[entry.componentType] * COMPONENTS[entry.type];
    const fits = (viewIndex: number, offset: number, count: number, each: number): boolean => {
      const view = bufferViews[viewIndex];
      if (!view) return false;
      const stride = view.extensions?.EXT_meshopt_compression?.byteStride ?? view.byteStride ?? each;
      const room = view.extensions?.EXT_meshopt_compression
        ? view.extensions.EXT_meshopt_compression.count * stride
        : view.byteLength;
      return count === 0 || offset + (count - 1) * stride + each <= room;
    };
    const { sparse } = entry;
    const isRoomy =
      (entry.bufferView === undefined || fits(entry.bufferView, entry.byteOffset, entry.count, size)) &&
      (!sparse ||
        (sparse.count <= entry.count &&
          fits(
            sparse.indices.bufferView,
            sparse.indices.byteOffset,
            sparse.count,
            COMPONENT_BYTES[sparse.indices.componentType],
          ) &&
          fits(sparse.values.bufferView, sparse.values.byteOffset, sparse.count, size)));
    if (!isRoomy) throw broken(`list ${index} of numbers is longer than the bytes that hold it`);
  }
}

/** Every node has one parent at most, and none is its own ancestor. */
function checkNodes({ nodes, scenes, scene, meshes, skins }: Description): void {
  const parents = new Int32Array(nodes.length).fill(-1);
  nodes.forEach(({ children, mesh, skin }, index) => {
    if ((mesh !== undefined && !meshes[mesh]) || (skin !== undefined && !skins[skin])) {
      throw broken(`node ${index} names what is not there`);
    }
    for (const child of children) {
      if (!nodes[child]) throw broken(`node ${index} has a child that is not there`);
      if (parents[child] >= 0) throw broken(`node ${child} hangs on two others`);
      parents[child] = index;
    }
  });
  const known = new Uint8Array(nodes.length);
  nodes.forEach((_, start) => {
    const way: number[] = [];
    for (let at = start; at >= 0 && known[at] !== 2; at = parents[at]) {
      if (known[at] === 1) throw broken(`node ${at} hangs on itself, round a circle`);
      known[at] = 1;
      way.push(at);
    }
    for (const at of way) known[at] = 2;
  });
  if (scene !== undefined && !scenes[scene]) throw broken(`scene ${scene} is named and is not there`);
  for (const { nodes: roots } of scenes) {
    if (roots.some((root) => !nodes[root])) throw broken('a scene names a node that is not there');
  }
}
