import { type IUniform, Matrix4, type Texture, Vector2 } from 'three';
import type { FrameCamera } from '../cameras/frameCamera';

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
  };
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
