import {
  type PerspectiveCamera,
  type Scene,
  Vector4,
  type WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';
import { hideMirror, showMirror } from '../materials/deckView';
import { BRIGHTEST } from '../materials/glowMaterial';
import type { MaterialLibrary } from '../materials/library';
import type { RoofSet } from '../roof/roofSet';
import { type Development, makeDeveloping } from './develop';
import { Glow, type Stray } from './glow';
import type { LensFocus } from './lens';
import { LensBlur } from './lensBlur';
import { type Streak, type StreakShape, Streaks } from './streaks';
import type { ViewTargets } from './targets';

/** Lenses and bulbs are drawn no brighter than this into the mirror's picture, whose small levels would sparkle. */
const BRIGHTEST_MIRRORED = 900;

export interface Painting {
  readonly camera: PerspectiveCamera;
  /** Level of the wet deck that the view mirrors; null for none. */
  readonly mirrorHeight: number | null;
  /** Whether the mirror's picture of the frame before will do, where there is one. */
  readonly mirrorMayBeLate: boolean;
  /** What the lens leaves soft; null for a view that is sharp throughout. */
  readonly focus: LensFocus | null;
  readonly streaks: { readonly of: readonly Streak[]; readonly shape: StreakShape } | null;
  /** How light goes astray, and the height of the delivered frame that its widths are shares of, pixels. */
  readonly strays: readonly Stray[];
  readonly frameHeight: number;
  /** What comes out middle grey, cd/m². */
  readonly greyLuminance: number;
}

/** What a painting left in its targets for the developing. */
export type Painted = Pick<Development, 'view' | 'veil' | 'glow'>;

/** A rectangle of the canvas in CSS pixels, from its lower left. */
export interface Pane {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Paints views into their targets and develops them onto the canvas or into a picture of their own. */
export class Painter {
  private readonly lensBlur = new LensBlur();
  private readonly streaks = new Streaks();
  private readonly glow = new Glow();
  private readonly developing = makeDeveloping();
  private readonly viewport = new Vector4();

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly scene: Scene,
    private readonly materials: MaterialLibrary,
    private readonly roof: RoofSet,
  ) {}

  /** Draws a view in cd/m² into its targets. */
  paint(targets: ViewTargets, painting: Painting): Painted {
    const { camera, mirrorHeight, focus, streaks } = painting;
    const { renderer, scene, materials } = this;
    const { deckView, glowCeiling } = materials;
    renderer.autoClear = true;
    hideMirror(deckView);
    this.roof.orderFrom(camera.position);
    if (mirrorHeight !== null && this.roof.decks.size > 0) {
      const { mirrorCamera } = targets;
      if (!painting.mirrorMayBeLate || targets.mirroredHeight !== mirrorHeight) {
        mirrorCamera.far = camera.far;
        mirrorCamera.mirror(camera, mirrorHeight);
        glowCeiling.value = BRIGHTEST_MIRRORED;
        for (const deck of this.roof.decks) deck.visible = false;
        renderer.setRenderTarget(targets.mirror);
        renderer.render(scene, mirrorCamera);
        for (const deck of this.roof.decks) deck.visible = true;
        targets.mirroredHeight = mirrorHeight;
      }
      const { texture, depthTexture, width, height } = targets.mirror;
      showMirror(deckView, mirrorCamera, { texture, depthTexture, width, height }, mirrorHeight);
    }
    glowCeiling.value = BRIGHTEST;
    renderer.setRenderTarget(targets.view);
    renderer.render(scene, camera);
    hideMirror(deckView);
    const isLensed = focus !== null || (streaks !== null && streaks.of.length > 0);
    if (isLensed) this.lensBlur.draw(renderer, targets, camera, focus, painting.greyLuminance);
    if (streaks) this.streaks.draw(renderer, targets, camera, streaks.of, streaks.shape);
    const light = isLensed ? targets.lensed.texture : targets.view.texture;
    this.glow.draw(renderer, targets, light, painting.strays, painting.frameHeight);
    renderer.setRenderTarget(null);
    return { view: light, veil: targets.veil.texture, glow: targets.glow.texture };
  }

  /** Develops onto the canvas, into a pane of it. */
  show(pane: Pane, development: Development): void {
    const { renderer } = this;
    renderer.setRenderTarget(null);
    renderer.autoClear = false;
    renderer.getViewport(this.viewport);
    renderer.setViewport(pane.x, pane.y, pane.width, pane.height);
    renderer.setScissor(pane.x, pane.y, pane.width, pane.height);
    renderer.setScissorTest(true);
    const ratio = renderer.getPixelRatio();
    this.developing.prepare(development, [pane.x * ratio, pane.y * ratio]);
    this.developing.sheet.draw(renderer, null);
    renderer.setScissorTest(false);
    renderer.setViewport(this.viewport);
    renderer.autoClear = true;
  }

  /** Develops into a target of plain colours, to be read back. */
  print(target: WebGLRenderTarget, development: Development): void {
    const { renderer } = this;
    this.developing.prepare(development, [0, 0]);
    this.developing.sheet.draw(renderer, target);
    renderer.setRenderTarget(null);
  }

  dispose(): void {
    this.lensBlur.dispose();
    this.streaks.dispose();
    this.glow.dispose();
    this.developing.sheet.dispose();
  }
}
