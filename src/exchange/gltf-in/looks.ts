import type { ModelPicture, ModelWrap } from '../../core/form/models/heldModel';
import type { Description } from './description';

/** What a material gives to the picture: a colour, and perhaps a picture on the surface. */
export interface SurfaceLook {
  /** Linear red, green, blue. */
  readonly colour: readonly [number, number, number];
  readonly picture: ModelPicture | null;
  /** Which of the corners' two sets of places on the picture. */
  readonly set: 'TEXCOORD_0' | 'TEXCOORD_1';
  /** Rows of the 2 × 3 matrix from the corner's place to the picture's. */
  readonly placing: readonly number[];
  readonly isCutOut: boolean;
  readonly isSeeThrough: boolean;
}

const PLAIN: SurfaceLook = {
  colour: [1, 1, 1],
  picture: null,
  set: 'TEXCOORD_0',
  placing: [1, 0, 0, 0, 1, 0],
  isCutOut: false,
  isSeeThrough: false,
};
const WRAPS: Readonly<Record<number, ModelWrap>> = { 33071: 'clamp', 33648: 'mirror', 10497: 'repeat' };
/** Surfaces with more pictures than this show their colours alone. */
const MOST_PICTURES = 64;
/** The kinds of picture that a browser opens, by how their bytes begin. */
const KINDS: readonly (readonly [mime: string, starts: RegExp])[] = [
  ['image/png', /^\x89PNG/],
  ['image/jpeg', /^\xff\xd8\xff/],
  ['image/webp', /^RIFF[\s\S]{4}WEBP/],
];

/** The kind of a picture, by its first bytes and not by what it says of itself; null for any other. */
export function pictureKind(bytes: Uint8Array): string | null {
  const start = String.fromCharCode(...bytes.subarray(0, 12));
  return KINDS.find(([, starts]) => starts.test(start))?.[0] ?? null;
}

/** Reads how the surfaces of a description look. Pictures are taken as they are, not opened. */
export class Looks {
  private readonly pictures = new Map<string, ModelPicture | null>();
  private readonly looks = new Map<number, SurfaceLook>();

  constructor(
    private readonly description: Description,
    private readonly binary: Uint8Array | null,
  ) {}

  of(material: number | undefined): SurfaceLook {
    if (material === undefined) return PLAIN;
    const known = this.looks.get(material);
    if (known) return known;
    const look = this.read(material);
    this.looks.set(material, look);
    return look;
  }

  private read(material: number): SurfaceLook {
    const entry = this.description.materials[material];
    if (!entry) return PLAIN;
    const { baseColorFactor = [1, 1, 1, 1], baseColorTexture } = entry.pbrMetallicRoughness ?? {};
    const picture = baseColorTexture ? this.picture(baseColorTexture.index) : null;
    const placed = baseColorTexture?.extensions?.KHR_texture_transform;
    const set = placed?.texCoord ?? baseColorTexture?.texCoord ?? 0;
    return {
      colour: [baseColorFactor[0], baseColorFactor[1], baseColorFactor[2]],
      picture,
      set: set === 1 ? 'TEXCOORD_1' : 'TEXCOORD_0',
      placing: placed ? placingOf(placed.offset, placed.rotation, placed.scale) : PLAIN.placing,
      isCutOut: entry.alphaMode !== 'OPAQUE' && picture !== null,
      isSeeThrough: entry.alphaMode === 'BLEND' && (baseColorFactor[3] < 1 || picture !== null),
    };
  }

  private picture(texture: number): ModelPicture | null {
    const entry = this.description.textures[texture];
    if (!entry) return null;
    const { wrapS = 10497, wrapT = 10497 } = this.description.samplers[entry.sampler ?? -1] ?? {};
    const source = entry.extensions?.EXT_texture_webp?.source ?? entry.source ?? -1;
    const key = `${source} ${wrapS} ${wrapT}`;
    const known = this.pictures.get(key);
    if (known !== undefined) return known;
    const bytes = this.pictures.size < MOST_PICTURES ? this.bytesOf(source) : null;
    const mime = bytes && pictureKind(bytes);
    const picture: ModelPicture | null =
      bytes && mime ? { bytes, mime, wraps: [WRAPS[wrapS], WRAPS[wrapT]] } : null;
    this.pictures.set(key, picture);
    return picture;
  }

  private bytesOf(source: number): Uint8Array | null {
    const image = this.description.images[source];
    if (!image) return null;
    if (image.uri !== undefined) return bytesInUri(image.uri);
    const view = this.description.bufferViews[image.bufferView ?? -1];
    const holder = view && this.description.buffers[view.buffer];
    if (!holder) return null;
    const whole = holder.uri === undefined ? this.binary : bytesInUri(holder.uri);
    return whole?.slice(view.byteOffset, view.byteOffset + view.byteLength) ?? null;
  }
}

function bytesInUri(uri: string): Uint8Array | null {
  const [, base64] = /^data:[^,]*;base64,(.*)$/s.exec(uri) ?? [];
  if (base64 === undefined) return null;
  try {
    return Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}

/** As KHR_texture_transform has it: scaled, then turned counter-clockwise, then moved. */
function placingOf(
  [moveU, moveV]: readonly number[],
  radians: number,
  [scaleU, scaleV]: readonly number[],
): readonly number[] {
  const [cosine, sine] = [Math.cos(radians), Math.sin(radians)];
  return [cosine * scaleU, sine * scaleV, moveU, -sine * scaleU, cosine * scaleV, moveV];
}
