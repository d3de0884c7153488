/** The few shapes of a glTF 2.0 document that this program writes. Indices point into the lists of the document. */
export interface GltfNode {
  readonly name: string;
  readonly mesh?: number;
  readonly camera?: number;
  readonly translation?: readonly number[];
  /** Unit quaternion x, y, z, w. */
  readonly rotation?: readonly number[];
  readonly extensions?: { readonly KHR_lights_punctual: { readonly light: number } };
  readonly extras?: Readonly<Record<string, unknown>>;
}

export interface GltfPrimitive {
  readonly attributes: { readonly POSITION: number; readonly NORMAL: number };
  readonly indices: number;
  readonly material: number;
}

export interface GltfMesh {
  readonly name: string;
  readonly primitives: readonly GltfPrimitive[];
}

export interface GltfCamera {
  readonly name: string;
  readonly type: 'perspective';
  readonly perspective: { readonly yfov: number; readonly aspectRatio: number; readonly znear: number };
}

export interface GltfLight {
  readonly name: string;
  readonly type: 'point' | 'spot';
  readonly color: readonly number[];
  /** Candela. */
  readonly intensity: number;
  readonly spot?: { readonly innerConeAngle: number; readonly outerConeAngle: number };
}

/** A list as a field of the document: glTF has no empty lists, so an empty one is no field at all. */
export function listed<Key extends string, Value>(
  key: Key,
  list: readonly Value[],
): { readonly [K in Key]?: readonly Value[] } {
  return list.length > 0 ? ({ [key]: list } as { readonly [K in Key]: readonly Value[] }) : {};
}
