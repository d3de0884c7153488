import {
  DataTexture,
  type IUniform,
  LinearFilter,
  LinearMipmapLinearFilter,
  Matrix4,
  RGFormat,
  type Texture,
  Vector2,
  Vector4,
} from 'three';
import type { FrameCamera } from '../cameras/frameCamera';
import type { WetMask } from './wetMask';

/** What the wet deck needs of the view that is being drawn; one set, shared by all decks, refilled for each view. */
export interface DeckView {
  readonly mirrorMap: IUniform<Texture | null>;
  readonly mirrorDepth: IUniform<Texture | null>;
  readonly mirrorFromWorld: IUniform<Matrix4>;
  readonly worldFromMirror: IUniform<Matrix4>;
  readonly mirrorTangents: IUniform<Vector2>;
  readonly mirrorPixels: IUniform<Vector2>;
  readonly mirrorHeight: IUniform<number>;
  readonly mirrorOn: IUniform<number>;
  /** Film and standing water where there are areas. */
  readonly wetMask: IUniform<Texture | null>;
  /** x and z of its first corner, and 1 over its sides, metres; 0 for these where there are no areas. */
  readonly wetPlace: IUniform<Vector4>;
}

export function makeDeckView(): DeckView {
  return {
    mirrorMap: { value: null },
    mirrorDepth: { value: null },
    mirrorFromWorld: { value: new Matrix4() },
    worldFromMirror: { value: new Matrix4() },
    mirrorTangents: { value: new Vector2(1, 1) },
    mirrorPixels: { value: new Vector2(1, 1) },
    mirrorHeight: { value: 0 },
    mirrorOn: { value: 0 },
    wetMask: { value: null },
    wetPlace: { value: new Vector4(0, 0, 0, 0) },
  };
}

/** Lays the areas that are wetter or drier than the ground over the decks, or takes them away. */
export function layAreas(view: DeckView, mask: WetMask | null): void {
  view.wetMask.value?.dispose();
  view.wetMask.value = null;
  view.wetPlace.value.set(0, 0, 0, 0);
  if (!mask) return;
  const texture = new DataTexture(mask.texels, mask.width, mask.height, RGFormat);
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  // A row of two bytes a texel need not be a multiple of four.
  texture.unpackAlignment = 1;
  texture.needsUpdate = true;
  view.wetMask.value = texture;
  view.wetPlace.value.set(mask.from[0], mask.from[1], 1 / mask.size[0], 1 / mask.size[1]);
}

/** Points the decks at a mirror's picture. */
export function showMirror(
  view: DeckView,
  mirror: FrameCamera,
  picture: {
    readonly texture: Texture;
    readonly depthTexture: Texture | null;
    readonly width: number;
    readonly height: number;
  },
  heightMetres: number,
): void {
  view.mirrorMap.value = picture.texture;
  view.mirrorDepth.value = picture.depthTexture;
  view.mirrorFromWorld.value.multiplyMatrices(mirror.projectionMatrix, mirror.matrixWorldInverse);
  view.worldFromMirror.value.copy(view.mirrorFromWorld.value).invert();
  view.mirrorTangents.value.set(mirror.tanHalfWidth, mirror.tanHalfHeight);
  view.mirrorPixels.value.set(picture.width, picture.height);
  view.mirrorHeight.value = heightMetres;
  view.mirrorOn.value = 1;
}

/** No mirror in this view; the textures go, so that none is read while it is drawn into. */
export function hideMirror(view: DeckView): void {
  view.mirrorMap.value = null;
  view.mirrorDepth.value = null;
  view.mirrorOn.value = 0;
}
