import { Matrix4, Quaternion, Vector3 } from 'three';

/** Triangles of one part, in the scene's coordinates. */
export interface ScenePart {
  readonly item: string;
  readonly part: string;
  readonly isLayer: boolean;
  readonly reflects: boolean;
  /** x, y, z of three corners for each triangle. */
  readonly corners: Float32Array;
}

export interface SceneCamera {
  readonly setup: string;
  readonly seconds: number;
  readonly position: Vector3;
  readonly right: Vector3;
  readonly up: Vector3;
  readonly forward: Vector3;
  readonly tanHalfHeight: number;
  readonly aspect: number;
}

export interface Scene {
  readonly parts: readonly ScenePart[];
  readonly cameras: readonly SceneCamera[];
}

interface Node {
  readonly name: string;
  readonly mesh?: number;
  readonly camera?: number;
  readonly translation?: [number, number, number];
  readonly rotation?: [number, number, number, number];
  readonly scale?: [number, number, number];
  readonly children?: readonly number[];
  readonly extras?: {
    readonly item?: string;
    readonly part?: string;
    readonly openness?: number;
    readonly reflecting?: boolean;
    readonly setup?: string;
    readonly seconds?: number;
  };
}

interface Document {
  readonly scene: number;
  readonly scenes: readonly { readonly nodes: readonly number[] }[];
  readonly nodes: readonly Node[];
  readonly meshes: readonly {
    readonly primitives: readonly {
      readonly attributes: { readonly POSITION: number };
      readonly indices: number;
      readonly mode?: number;
    }[];
  }[];
  readonly cameras: readonly {
    readonly type: string;
    readonly perspective: { readonly yfov: number; readonly aspectRatio: number };
  }[];
  readonly accessors: readonly {
    readonly bufferView: number;
    readonly byteOffset?: number;
    readonly componentType: number;
    readonly count: number;
    readonly type: string;
  }[];
  readonly bufferViews: readonly {
    readonly byteOffset?: number;
    readonly byteLength: number;
    readonly byteStride?: number;
  }[];
}

/** Reads the two chunks of a GLB container, by the glTF 2.0 specification and nothing of the product's. */
function chunksOf(bytes: Uint8Array): { readonly document: Document; readonly binary: DataView } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (view.getUint32(0, true) !== 0x46546c67 || view.getUint32(4, true) !== 2)
    throw new Error('no GLB, version 2');
  if (view.getUint32(8, true) !== bytes.length) throw new Error('the length in the header is not the file’s');
  const textBytes = view.getUint32(12, true);
  const text = new TextDecoder().decode(bytes.subarray(20, 20 + textBytes));
  const start = bytes.byteOffset + 20 + textBytes + 8;
  return {
    document: JSON.parse(text),
    binary: new DataView(bytes.buffer, start, view.getUint32(20 + textBytes, true)),
  };
}

const WIDTHS: Readonly<Record<number, number>> = { 5121: 1, 5123: 2, 5125: 4, 5126: 4 };

function numbersOf({ accessors, bufferViews }: Document, binary: DataView, index: number): number[] {
  const { bufferView, byteOffset = 0, componentType, count, type } = accessors[index];
  const view = bufferViews[bufferView];
  const width = WIDTHS[componentType];
  const components = type === 'SCALAR' ? 1 : type === 'VEC3' ? 3 : Number.NaN;
  const stride = view.byteStride ?? width * components;
  const read = (at: number): number => {
    if (componentType === 5126) return binary.getFloat32(at, true);
    if (width === 4) return binary.getUint32(at, true);
    return width === 2 ? binary.getUint16(at, true) : binary.getUint8(at);
  };
  const numbers: number[] = [];
  for (let k = 0; k < count; k += 1) {
    for (let c = 0; c < components; c += 1) {
      numbers.push(read((view.byteOffset ?? 0) + byteOffset + k * stride + c * width));
    }
  }
  return numbers;
}

/** What an exported scene holds: parts by the extras of their nodes, and the setups' cameras. */
export function readScene(bytes: Uint8Array): Scene {
  const { document, binary } = chunksOf(bytes);
  const parts: ScenePart[] = [];
  const cameras: SceneCamera[] = [];
  const visit = (index: number, parent: Matrix4): void => {
    const { name, mesh, camera, extras = {}, children = [], ...motion } = document.nodes[index];
    const world = new Matrix4()
      .compose(
        new Vector3(...(motion.translation ?? [0, 0, 0])),
        new Quaternion(...(motion.rotation ?? [0, 0, 0, 1])),
        new Vector3(...(motion.scale ?? [1, 1, 1])),
      )
      .premultiply(parent);
    if (mesh !== undefined && extras.item !== undefined && extras.part !== undefined) {
      if (name !== `${extras.item}:${extras.part}`) throw new Error(`node "${name}" has other extras`);
      const corners: number[] = [];
      for (const { attributes, indices, mode = 4 } of document.meshes[mesh].primitives) {
        if (mode !== 4) throw new Error(`node "${name}" is not made of triangles`);
        const positions = numbersOf(document, binary, attributes.POSITION);
        for (const corner of numbersOf(document, binary, indices)) {
          corners.push(...new Vector3().fromArray(positions, corner * 3).applyMatrix4(world));
        }
      }
      parts.push({
        item: extras.item,
        part: extras.part,
        isLayer: extras.openness !== undefined,
        reflects: extras.reflecting === true,
        corners: Float32Array.from(corners),
      });
    }
    if (camera !== undefined && extras.setup !== undefined && extras.seconds !== undefined) {
      if (name !== extras.setup) throw new Error(`camera "${name}" has other extras`);
      const [right, up, back] = [new Vector3(), new Vector3(), new Vector3()];
      world.extractBasis(right, up, back);
      const { yfov, aspectRatio } = document.cameras[camera].perspective;
      cameras.push({
        setup: extras.setup,
        seconds: extras.seconds,
        position: new Vector3().setFromMatrixPosition(world),
        right,
        up,
        forward: back.negate(),
        tanHalfHeight: Math.tan(yfov / 2),
        aspect: aspectRatio,
      });
    }
    for (const child of children) visit(child, world);
  };
  for (const root of document.scenes[document.scene].nodes) visit(root, new Matrix4());
  return { parts, cameras };
}
