import type { PartShape } from '../../core/form/types';
import { linearColour } from './linearColour';
import { SUBSTANCE_LOOKS } from './substances';

/** Collects one material for each mix of substance, colour and openness that occurs. */
export class Materials {
  readonly list: object[] = [];
  private readonly places = new Map<string, number>();

  /** What tells the materials apart. */
  static keyOf(shape: PartShape): string {
    return `${shape.substance} ${shape.colour ?? ''} ${shape.openness ?? ''}`;
  }

  /** The number of the shape's material in the list. */
  of(shape: PartShape): number {
    const key = Materials.keyOf(shape);
    const known = this.places.get(key);
    if (known !== undefined) return known;
    this.places.set(key, this.list.length);
    this.list.push(materialOf(shape));
    return this.list.length - 1;
  }
}

function materialOf({ substance, colour, openness }: PartShape): object {
  const look = SUBSTANCE_LOOKS[substance];
  const linear = linearColour(colour ?? look.colour);
  return {
    name: colour === null ? substance : `${substance} ${colour}`,
    pbrMetallicRoughness: {
      baseColorFactor: [...linear, 1 - (openness ?? 0)],
      metallicFactor: look.metallic,
      roughnessFactor: look.roughness,
    },
    ...(look.glows ? { emissiveFactor: linear } : {}),
    ...(look.sheet || openness !== null ? { doubleSided: true } : {}),
    ...(openness !== null ? { alphaMode: 'BLEND' } : {}),
  };
}
