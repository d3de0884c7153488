import {
  ClampToEdgeWrapping,
  DataTexture,
  type MeshStandardMaterial,
  MirroredRepeatWrapping,
  RepeatWrapping,
  SRGBColorSpace,
  Texture,
  type Wrapping,
} from 'three';
import type { ModelPicture, ModelWrap } from '../../core/form/models/heldModel';
import { assetStore } from '../../desk/assets/assetStore';

/** Longest side of a picture on a model: what every card takes. */
const LONGEST_SIDE = 4096;
const WRAPPINGS: Readonly<Record<ModelWrap, Wrapping>> = {
  repeat: RepeatWrapping,
  mirror: MirroredRepeatWrapping,
  clamp: ClampToEdgeWrapping,
};

/** The pictures on imported models, opened when they are first drawn. Until then a surface is a middle grey. */
export class SkinPictures {
  private readonly waiting = makeGrey();
  private readonly textures = new Set<Texture>();

  /** Puts a picture on a material, at once in grey and by itself as soon as it is open. */
  putOn(material: MeshStandardMaterial, picture: ModelPicture): void {
    material.map = this.waiting;
    void opened(picture).then((bitmap) => {
      if (!bitmap) return;
      const texture = new Texture(bitmap);
      texture.colorSpace = SRGBColorSpace;
      texture.flipY = false;
      [texture.wrapS, texture.wrapT] = picture.wraps.map((wrap) => WRAPPINGS[wrap]);
      texture.anisotropy = 4;
      texture.needsUpdate = true;
      this.textures.add(texture);
      material.map = texture;
      assetStore.setState(({ painted }) => ({ painted: painted + 1 }));
    });
  }

  dispose(): void {
    for (const texture of this.textures) texture.dispose();
    this.textures.clear();
    this.waiting.dispose();
  }
}

function makeGrey(): DataTexture {
  const grey = new DataTexture(Uint8Array.of(128, 128, 128, 255), 1, 1);
  grey.colorSpace = SRGBColorSpace;
  grey.needsUpdate = true;
  return grey;
}

/** Null for a picture that the browser does not open: the surface stays grey. */
async function opened({ bytes, mime }: ModelPicture): Promise<ImageBitmap | null> {
  const how = {
    imageOrientation: 'from-image',
    premultiplyAlpha: 'none',
    colorSpaceConversion: 'none',
  } as const;
  try {
    const whole = await createImageBitmap(new Blob([Uint8Array.from(bytes)], { type: mime }), how);
    const scale = LONGEST_SIDE / Math.max(whole.width, whole.height);
    if (scale >= 1) return whole;
    const small = await createImageBitmap(whole, {
      ...how,
      resizeWidth: Math.round(whole.width * scale),
      resizeHeight: Math.round(whole.height * scale),
      resizeQuality: 'high',
    });
    whole.close();
    return small;
  } catch {
    return null;
  }
}
