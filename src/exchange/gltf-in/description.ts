import * as v from 'valibot';
import { LONGEST_QUOTE } from '../../core/plan/faults';
import { ModelFault } from './modelFault';

/** A place in one of the description's lists, or a number of bytes or corners. */
const whole = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(2 ** 32));
const finite = v.pipe(v.number(), v.finite());
const name = v.optional(v.fallback(v.string(), ''), '');
const list = <const Entry extends v.GenericSchema>(entry: Entry, most: number) =>
  v.optional(v.pipe(v.array(entry), v.maxLength(most)), []);
const numbers = (count: number) => v.pipe(v.array(finite), v.length(count));

/** What a model may have at most of each thing: far above any scan, low enough to be gone through in a moment. */
export const MOST_NODES = 200_000;
const MOST_ENTRIES = 400_000;

const buffer = v.object({
  byteLength: whole,
  uri: v.optional(v.string()),
  extensions: v.optional(v.unknown()),
});
const packedView = v.object({
  buffer: whole,
  byteOffset: v.optional(whole),
  byteLength: whole,
  byteStride: v.pipe(whole, v.minValue(1), v.maxValue(256)),
  count: whole,
  mode: v.picklist(['ATTRIBUTES', 'TRIANGLES', 'INDICES']),
  filter: v.optional(v.picklist(['NONE', 'OCTAHEDRAL', 'QUATERNION', 'EXPONENTIAL', 'COLOR'])),
});
const bufferView = v.object({
  buffer: whole,
  byteOffset: v.optional(whole, 0),
  byteLength: whole,
  byteStride: v.optional(v.pipe(whole, v.minValue(1), v.maxValue(252))),
  extensions: v.optional(v.object({ EXT_meshopt_compression: v.optional(packedView) })),
});
const accessor = v.object({
  bufferView: v.optional(whole),
  byteOffset: v.optional(whole, 0),
  componentType: v.picklist([5120, 5121, 5122, 5123, 5125, 5126]),
  count: whole,
  type: v.picklist(['SCALAR', 'VEC2', 'VEC3', 'VEC4', 'MAT2', 'MAT3', 'MAT4']),
  normalized: v.optional(v.boolean()),
  sparse: v.optional(
    v.object({
      count: whole,
      indices: v.object({
        bufferView: whole,
        byteOffset: v.optional(whole, 0),
        componentType: v.picklist([5121, 5123, 5125]),
      }),
      values: v.object({ bufferView: whole, byteOffset: v.optional(whole, 0) }),
    }),
  ),
});
const attributes = v.record(v.string(), whole);
const primitive = v.object({
  attributes,
  indices: v.optional(whole),
  material: v.optional(whole),
  mode: v.optional(v.pipe(whole, v.maxValue(6)), 4),
  extensions: v.optional(
    v.object({
      KHR_draco_mesh_compression: v.optional(v.object({ bufferView: whole, attributes })),
    }),
  ),
});
const mesh = v.object({ name, primitives: list(primitive, MOST_ENTRIES) });
const node = v.object({
  name,
  mesh: v.optional(whole),
  skin: v.optional(whole),
  children: list(whole, MOST_NODES),
  matrix: v.optional(numbers(16)),
  translation: v.optional(numbers(3), [0, 0, 0]),
  rotation: v.optional(numbers(4), [0, 0, 0, 1]),
  scale: v.optional(numbers(3), [1, 1, 1]),
  extensions: v.optional(v.object({ EXT_mesh_gpu_instancing: v.optional(v.object({ attributes })) })),
});
const pictureOnSurface = v.object({
  index: whole,
  texCoord: v.optional(whole, 0),
  extensions: v.optional(
    v.object({
      KHR_texture_transform: v.optional(
        v.object({
          offset: v.optional(numbers(2), [0, 0]),
          rotation: v.optional(finite, 0),
          scale: v.optional(numbers(2), [1, 1]),
          texCoord: v.optional(whole),
        }),
      ),
    }),
  ),
});
const material = v.object({
  alphaMode: v.optional(v.picklist(['OPAQUE', 'MASK', 'BLEND']), 'OPAQUE'),
  pbrMetallicRoughness: v.optional(
    v.object({
      baseColorFactor: v.optional(numbers(4), [1, 1, 1, 1]),
      baseColorTexture: v.optional(pictureOnSurface),
    }),
  ),
});
const texture = v.object({
  source: v.optional(whole),
  sampler: v.optional(whole),
  extensions: v.optional(v.object({ EXT_texture_webp: v.optional(v.object({ source: whole })) })),
});
const image = v.object({
  bufferView: v.optional(whole),
  uri: v.optional(v.string()),
  mimeType: v.optional(v.string()),
});
const wrap = v.optional(v.picklist([33071, 33648, 10497]), 10497);

const description = v.object({
  asset: v.object({ version: v.string(), minVersion: v.optional(v.string()) }),
  extensionsRequired: list(v.string(), 100),
  buffers: list(buffer, 1000),
  bufferViews: list(bufferView, MOST_ENTRIES),
  accessors: list(accessor, MOST_ENTRIES),
  meshes: list(mesh, MOST_ENTRIES),
  nodes: list(node, MOST_NODES),
  skins: list(v.object({ joints: list(whole, MOST_NODES), inverseBindMatrices: v.optional(whole) }), 10_000),
  scene: v.optional(whole),
  scenes: list(v.object({ nodes: list(whole, MOST_NODES) }), 1000),
  materials: list(material, 10_000),
  textures: list(texture, 10_000),
  images: list(image, 10_000),
  samplers: list(v.object({ wrapS: wrap, wrapT: wrap }), 10_000),
});

/** The parts of a glTF description that the roof needs; all else is left behind. */
export type Description = v.InferOutput<typeof description>;
export type NodeEntry = Description['nodes'][number];
export type PrimitiveEntry = Description['meshes'][number]['primitives'][number];
export type AccessorEntry = Description['accessors'][number];

/** Reads a description by its schema. @throws ModelFault that names the first place that breaks it */
export function readDescription(found: unknown): Description {
  const read = v.safeParse(description, found, { abortEarly: true });
  if (read.success) return read.output;
  const [issue] = read.issues;
  const where = v.getDotPath(issue);
  throw new ModelFault(
    `The description in the file breaks the rules of glTF 2.0${where ? ` at ${shortened(where)}` : ''}: found ${shortened(issue.received)}, expected ${shortened(issue.expected ?? 'something else')}.`,
  );
}

/** Words out of a file, fit to be said in a sentence: no control characters, and not long. */
export function shortened(words: string): string {
  const plain = words.replace(/[\p{Cc}\p{Cf}\u2028\u2029]/gu, ' ').trim();
  return plain.length > LONGEST_QUOTE ? `${plain.slice(0, LONGEST_QUOTE)}…` : plain;
}
