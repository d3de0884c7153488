import { type DataTexture, type IUniform, Vector2, Vector4 } from 'three';

/**
 * What the lit surfaces need of the lamps beyond three's own lights, in the order of three's spots: those that cast
 * shadows first. Shared by all materials and filled by the lamp rig.
 */
export interface LampUniforms {
  readonly [name: string]: IUniform;
  /** Of each spot: how far along its width and height four places stand for its face, metres; its first row of candela, or where its curve ends; and its planes, 0 for a curve. */
  readonly lampFaces: IUniform<Vector4[]>;
  /** Of each that casts shadows: one over the nearest that its map holds, that less one over the farthest, the tangent of half its angle, the radius of its face. */
  readonly lampShadows: IUniform<Vector4[]>;
  readonly candelaRows: IUniform<DataTexture | null>;
  /** Looks for what is in the way, and looks at the light past it, for each pixel and lamp. */
  readonly shadowTaps: IUniform<Vector2>;
  /** Nets that stand in the light, three texels each, and how many there are: see `Nets`. */
  readonly netRows: IUniform<DataTexture | null>;
  readonly netCount: IUniform<number>;
}

export const LAMP_UNIFORMS: LampUniforms = {
  lampFaces: { value: [] },
  lampShadows: { value: [] },
  candelaRows: { value: null },
  shadowTaps: { value: new Vector2(6, 8) },
  netRows: { value: null },
  netCount: { value: 0 },
};

/** As many vectors as asked for, those that there are already kept. */
export function resized(vectors: Vector4[], count: number): Vector4[] {
  while (vectors.length < count) vectors.push(new Vector4());
  vectors.length = count;
  return vectors;
}
