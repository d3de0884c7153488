import { BasicShadowMap, FogExp2, NoToneMapping, Scene, WebGLRenderer } from 'three';
import { HAZE_PER_METRE } from '../../core/light/surroundings';
import { frameShapeOf } from '../../core/optics/camera';
import type { CameraPose } from '../../core/optics/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { Still } from '../../desk/contactStills';
import { FIRST_SHOWS } from '../../desk/pictureShows';
import { LOOK_AROUND } from '../../desk/viewStore';
import { FrameCamera } from '../cameras/frameCamera';
import { StillPrinter } from '../contact/stillPrinter';
import { mirrorHeightUnder } from '../drive/mirrorHeight';
import { SetupPainter } from '../drive/setupPainter';
import { secondsIn } from '../drive/setupView';
import { strayLight } from '../drive/strayLight';
import { World } from '../drive/world';
import { HAZE_COLOUR } from '../light/sky';
import type { Development } from '../picture/develop';
import { walkExposure } from '../picture/exposure';
import { Painter } from '../picture/painter';
import { type TargetSizes, ViewTargets } from '../picture/targets';
import { type CrewQuality, crewQuality } from './crewQuality';
import { type Box, pieceIn } from './shownPiece';

/** What of an action is shown. */
export interface CrewMoment {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly seconds: number;
  /** Whether more of the same follows at once: then it is drawn as light as this machine needs. */
  readonly isMoving: boolean;
}

/** How it is looked at. */
export type CrewView =
  /** Through the lens, with the look-around: where the picture lies; it may be larger than the canvas. */
  | { readonly picture: Box }
  /** From the camera's place, another way, over the whole canvas; `halves` are tangents of half the angles taken in. */
  | { readonly look: CameraPose; readonly halves: readonly [number, number] };

/** The card has no memory left for a picture. */
class NoMemory extends Error {}

/**
 * The roof for whoever only looks: a canvas of its own, drawn when it is asked and never by itself. The same set, lamps
 * and lens as on the desk, without anything that is edited by.
 */
export class CrewStage {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly world: World;
  private readonly painter: Painter;
  private readonly setups: SetupPainter;
  private readonly stills: StillPrinter;
  private readonly eye = new FrameCamera();
  readonly quality: CrewQuality;
  private targets: ViewTargets | null = null;
  private size: readonly [number, number, number] = [0, 0, 0];
  private planBefore: Plan | null = null;

  /** @throws Error where the browser gives no context. `onLost` hears when the card drops everything. */
  constructor(private readonly onLost: () => void) {
    this.renderer = new WebGLRenderer({ antialias: false, alpha: true });
    const { renderer, scene } = this;
    renderer.toneMapping = NoToneMapping;
    renderer.shadowMap.enabled = true;
    renderer.shadowMap.type = BasicShadowMap;
    renderer.setClearColor(0x000000, 0);
    scene.fog = new FogExp2(0, HAZE_PER_METRE);
    scene.fog.color.setRGB(HAZE_COLOUR.x, HAZE_COLOUR.y, HAZE_COLOUR.z);
    this.world = new World(renderer, scene);
    this.painter = new Painter(renderer, scene, this.world.materials, this.world.roof);
    this.setups = new SetupPainter(this.world, this.painter);
    this.stills = new StillPrinter(renderer, this.painter);
    this.quality = crewQuality(renderer.getContext());
    this.canvas.addEventListener('webglcontextlost', this.onLost);
  }

  get canvas(): HTMLCanvasElement {
    return this.renderer.domElement;
  }

  /** Whether the card has dropped everything, which its event tells only later. */
  get isLost(): boolean {
    return this.renderer.getContext().isContextLost();
  }

  /**
   * Prints the next piece of a still; true when that was the last.
   *
   * @throws NoMemory when the card has none left for it
   */
  printStill(still: Still): boolean {
    const { plan, setup, widths } = still;
    const quality = this.quality.resting;
    const drawn = { plan, quality, shows: FIRST_SHOWS };
    const seconds = secondsIn(plan, setup, still.seconds);
    this.follow(plan);
    const isDone = this.stills.print(still, quality, (targets, piece) =>
      this.setups.paint(targets, drawn, { setup, seconds, widths, piece }),
    );
    const gl = this.renderer.getContext();
    if (gl.getError() === gl.OUT_OF_MEMORY) throw new NoMemory('the graphics card has no memory left');
    return isDone;
  }

  /** Draws a view onto the canvas, which takes the size of `area`, CSS pixels. */
  show(moment: CrewMoment, view: CrewView, area: { readonly width: number; readonly height: number }): void {
    const { plan, setup, isMoving } = moment;
    const { renderer } = this;
    this.follow(plan);
    this.fit(area.width, area.height);
    renderer.setRenderTarget(null);
    renderer.clear();
    const quality = isMoving ? this.quality.moving : this.quality.resting;
    const { samples, mirrorDivisor } = quality;
    const ratio = Math.min(window.devicePixelRatio, quality.mostPixelRatio);
    const seconds = secondsIn(plan, setup, moment.seconds);
    const bends = frameShapeOf(plan, setup).distortion !== null;
    const shown = pieceIn(
      'look' in view ? { left: 0, top: 0, ...area } : view.picture,
      area,
      ratio,
      'look' in view || bends,
    );
    if (!shown) return;
    const targets = this.targetsOf({ width: shown.width, height: shown.height, samples, mirrorDivisor });
    const development =
      'look' in view
        ? this.around(targets, { ...moment, seconds }, view)
        : this.setups.paint(
            targets,
            { plan, quality, shows: FIRST_SHOWS },
            { setup, seconds, widths: LOOK_AROUND, piece: shown.piece },
          );
    const { left, top, width, height } = shown.box;
    this.painter.show({ x: left, y: area.height - top - height, width, height }, development);
  }

  dispose(): void {
    this.canvas.removeEventListener('webglcontextlost', this.onLost);
    this.canvas.remove();
    this.targets?.dispose();
    this.stills.dispose();
    this.painter.dispose();
    this.world.dispose();
    this.renderer.dispose();
    // Browsers give a page few contexts, and take their time to collect one.
    this.renderer.forceContextLoss();
  }

  /** As the walk-round on the desk: sharp throughout, a stop brighter than the lens has it. */
  private around(
    targets: ViewTargets,
    { plan, setup, seconds, isMoving }: CrewMoment,
    { look, halves }: Extract<CrewView, { readonly look: CameraPose }>,
  ): Development {
    this.world.pose(plan, setup, seconds, isMoving ? this.quality.moving : this.quality.resting);
    this.eye.setPose(look);
    this.eye.setHalves(...halves);
    const exposure = walkExposure(setup);
    const { strays, keep } = strayLight(null);
    const painted = this.painter.paint(targets, {
      camera: this.eye,
      mirrorHeight: mirrorHeightUnder(plan, look.position),
      mirrorMayBeLate: false,
      focus: null,
      streaks: null,
      strays,
      frameHeight: targets.view.height,
      greyLuminance: 0.18 / exposure.perCandela,
    });
    return { ...painted, keep, ring: null, grain: null, exposure, bending: null };
  }

  /** Gives back what shapes that have gone held on the card, when the plan is another. */
  private follow(plan: Plan): void {
    if (this.planBefore && this.planBefore !== plan) this.world.roof.sweep();
    this.planBefore = plan;
  }

  private fit(width: number, height: number): void {
    const ratio = Math.min(window.devicePixelRatio, this.quality.resting.mostPixelRatio);
    const size = [width, height, ratio] as const;
    if (size.every((each, k) => each === this.size[k])) return;
    this.size = size;
    this.renderer.setPixelRatio(ratio);
    this.renderer.setSize(width, height);
  }

  private targetsOf(sizes: TargetSizes): ViewTargets {
    if (this.targets?.fits(sizes)) return this.targets;
    this.targets?.dispose();
    this.targets = new ViewTargets(sizes);
    return this.targets;
  }
}
