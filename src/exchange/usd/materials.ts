import type { PartShape } from '../../core/form/types';
import { linearColour } from '../glb/linearColour';
import { Materials as GlbMaterials } from '../glb/materials';
import { SUBSTANCE_LOOKS } from '../glb/substances';
import { Identifiers, metadata, numberText, prim, tuple } from './text';

/** Collects one material for each mix of substance, colour and openness that occurs, as the binary glTF has them. */
export class UsdMaterials {
  private readonly identifiers = new Identifiers();
  private readonly known = new Map<string, string>();
  private readonly prims: string[] = [];

  /** What tells the materials apart. */
  static readonly keyOf = GlbMaterials.keyOf;

  /** @param scope the path of the prim that holds them */
  constructor(private readonly scope: string) {}

  /** The path of a shape's material. */
  of(shape: PartShape): string {
    const key = UsdMaterials.keyOf(shape);
    const path = this.known.get(key);
    if (path !== undefined) return path;
    const { substance, colour } = shape;
    const identifier = this.identifiers.of(colour === null ? substance : `${substance} ${colour}`);
    const own = `${this.scope}/${identifier}`;
    this.known.set(key, own);
    this.prims.push(...materialLines(identifier, own, shape));
    return own;
  }

  /** All of them, as the lines of the prim that holds them. */
  lines(): readonly string[] {
    return this.prims;
  }
}

function materialLines(
  identifier: string,
  path: string,
  { substance, colour, openness }: PartShape,
): string[] {
  const look = SUBSTANCE_LOOKS[substance];
  const linear = tuple(linearColour(colour ?? look.colour));
  const shader = prim(
    'Shader "Surface"',
    [],
    [
      'uniform token info:id = "UsdPreviewSurface"',
      `color3f inputs:diffuseColor = ${linear}`,
      ...(look.glows ? [`color3f inputs:emissiveColor = ${linear}`] : []),
      `float inputs:metallic = ${numberText(look.metallic)}`,
      `float inputs:roughness = ${numberText(look.roughness)}`,
      `float inputs:opacity = ${numberText(1 - (openness ?? 0))}`,
      'token outputs:surface',
    ],
  );
  return prim(`Material "${identifier}"`, metadata(null, { substance }), [
    `token outputs:surface.connect = <${path}/Surface.outputs:surface>`,
    ...shader,
  ]);
}
