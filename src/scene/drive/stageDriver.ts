import type { Scene, WebGLRenderer } from 'three';
import { greyLuminance } from '../../core/light/exposure';
import { glassOf, stateAt, swayingCameraAt } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { Still } from '../../desk/contactStills';
import type { PictureShows } from '../../desk/pictureShows';
import { LOOK_AROUND } from '../../desk/viewStore';
import { FrameCamera } from '../cameras/frameCamera';
import { aimPiece, type Piece } from '../contact/pieces';
import { StillPrinter } from '../contact/stillPrinter';
import type { Development } from '../picture/develop';
import { exposureOf, walkExposure } from '../picture/exposure';
import { Painter, type Pane } from '../picture/painter';
import { type TargetSizes, ViewTargets } from '../picture/targets';
import { chosenAt } from '../walk/chosenRounds';
import { hiddenIn } from '../walk/picking';
import { WalkHelpers } from '../walk/walkHelpers';
import type { WalkRound } from '../walk/walkRound';
import { differs } from './differs';
import { drawnWith } from './drawnWith';
import { mirrorHeightUnder } from './mirrorHeight';
import type { Quality } from './quality';
import { aimFrame, lensFocusAt, secondsIn } from './setupView';
import { frameHeightIn, grainIn, ringIn, strayLight } from './strayLight';
import { streakShapeOf, streaksAt } from './streaksAt';
import { ThumbPrint, thumbSize } from './thumbs';
import { World } from './world';

/** All that is drawn from, as it is at one moment. */
export interface Moment {
  readonly plan: Plan;
  readonly seconds: number;
  readonly quality: Quality;
  /** What of the optics the setups' pictures show. */
  readonly shows: PictureShows;
  readonly pixelRatio: number;
}

/** A view's picture, with what it was painted from: as long as that stays, it is not painted again. */
interface Painted {
  readonly targets: ViewTargets;
  readonly inputs: readonly unknown[];
  readonly development: Development;
}

/** Paints the views of the stage: the frames of the setups that are seen, the walk-round and the setups' thumbnails. */
export class StageDriver {
  private readonly world: World;
  private readonly painter: Painter;
  private readonly camera = new FrameCamera();
  private readonly helpers = new WalkHelpers();
  private readonly print = new ThumbPrint();
  private readonly stills: StillPrinter;
  private readonly painted = new Map<string, Painted>();
  private readonly printed = new Map<string, readonly unknown[]>();
  private lastPrinted: string | null = null;
  /** How many views have been painted: it stands still while nothing changes. */
  paintings = 0;

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly scene: Scene,
  ) {
    scene.add(this.helpers.group);
    this.world = new World(renderer, scene);
    this.painter = new Painter(renderer, scene, this.world.materials, this.world.roof);
    this.stills = new StillPrinter(renderer, this.painter);
  }

  /**
   * A setup's frame with its look-around, into a pane of the canvas. What `mayBeLate` is shown as it was last painted,
   * where it was.
   */
  showFrame(moment: Moment, setup: Setup, pane: Pane, mayBeLate = false): void {
    const { plan, quality, shows, pixelRatio } = moment;
    const seconds = secondsIn(plan, setup, moment.seconds);
    const name = frameName(setup.id);
    const sizes = sizesOf(pane, pixelRatio, quality);
    const before = this.painted.get(name);
    if (mayBeLate && before?.targets.fits(sizes)) {
      this.painter.show(pane, before.development);
      return;
    }
    const painted = this.painting(
      name,
      sizes,
      [plan, seconds, setup, quality, shows, ...drawnWith()],
      (targets) => this.paintSetup(targets, moment, setup, seconds, LOOK_AROUND),
    );
    this.painter.show(pane, painted.development);
  }

  /** The walk-round without what is hidden, into a pane of the canvas, with rings around the selected items. */
  showWalk(
    moment: Moment,
    setup: Setup | null,
    walk: WalkRound,
    pane: Pane,
    selectedIds: readonly string[],
  ): void {
    const { plan, seconds, quality, pixelRatio } = moment;
    const inputs = [plan, seconds, setup, quality, walk.version, selectedIds, ...drawnWith()];
    const painted = this.painting('walk', sizesOf(pane, pixelRatio, quality), inputs, (targets) => {
      this.world.pose(plan, null, seconds, quality);
      const exposure = walkExposure(setup);
      this.helpers.set(plan, setup, seconds, chosenAt(plan, selectedIds, seconds), exposure);
      walk.camera.updateMatrixWorld();
      const { x, y, z } = walk.camera.position;
      const mirrorHeight = mirrorHeightUnder(plan, [x, y, z]);
      const { strays, keep } = strayLight(null);
      const painted = this.world.roof.without(hiddenIn(plan), () =>
        this.painter.paint(targets, {
          camera: walk.camera,
          mirrorHeight,
          focus: null,
          streaks: null,
          strays,
          frameHeight: targets.view.height,
          greyLuminance: 0.18 / exposure.perCandela,
        }),
      );
      return { ...painted, keep, ring: null, grain: null, exposure, bending: null };
    });
    this.painter.show(pane, painted.development);
  }

  /** Gives back what the walk-round's picture holds on the card, while it is not shown. */
  forgetWalk(): void {
    this.forget('walk');
  }

  /** Gives back what the frames of all other setups hold on the card. */
  forgetFrames(shown: readonly string[]): void {
    const names = new Set(shown.map(frameName));
    for (const name of this.painted.keys()) if (isFrame(name) && !names.has(name)) this.forget(name);
  }

  /** Copies the next thumbnail that is out of date onto its canvas, in turn; false when all are up to date. */
  printNextThumb(moment: Moment, canvases: ReadonlyMap<string, HTMLCanvasElement>): boolean {
    const { plan, quality, shows } = moment;
    for (const setupId of this.printed.keys()) if (!canvases.has(setupId)) this.printed.delete(setupId);
    const first = plan.setups.findIndex(({ id }) => id === this.lastPrinted) + 1;
    for (const setup of [...plan.setups.slice(first), ...plan.setups.slice(0, first)]) {
      const canvas = canvases.get(setup.id);
      if (!canvas) continue;
      const size = thumbSize(canvas);
      const seconds = secondsIn(plan, setup, moment.seconds);
      const inputs = [plan, seconds, setup, quality, shows, canvas, size.width, size.height, ...drawnWith()];
      if (!differs(this.printed.get(setup.id) ?? [], inputs)) continue;
      this.printed.set(setup.id, inputs);
      this.lastPrinted = setup.id;
      const sizes = { ...size, samples: quality.samples, mirrorDivisor: quality.mirrorDivisor };
      const painted = this.painting('thumb', sizes, inputs, (targets) =>
        this.paintSetup(targets, moment, setup, seconds, 1),
      );
      this.painter.print(this.print.targetOf(size), painted.development);
      this.print.copyTo(canvas, this.renderer);
      return true;
    }
    return false;
  }

  /** Prints the next piece of a picture that was asked for by itself; true when that was the last. */
  printStill(still: Still, quality: Quality, shows: PictureShows): boolean {
    const { plan, setup, widths } = still;
    const seconds = secondsIn(plan, setup, still.seconds);
    const moment = { plan, seconds, quality, shows, pixelRatio: 1 };
    return this.stills.print(still, quality, (targets, piece) => {
      this.paintings += 1;
      return this.paintSetup(targets, moment, setup, seconds, widths, piece);
    });
  }

  /** Gives back what shapes that have gone held on the card. */
  sweep(): void {
    this.world.roof.sweep();
  }

  /** After the card has lost everything: all is out of date. */
  redraw(): void {
    this.world.redraw();
    for (const { targets } of this.painted.values()) targets.dispose();
    this.painted.clear();
    this.printed.clear();
  }

  dispose(): void {
    for (const { targets } of this.painted.values()) targets.dispose();
    this.scene.remove(this.helpers.group);
    this.helpers.dispose();
    this.print.dispose();
    this.stills.dispose();
    this.painter.dispose();
    this.world.dispose();
  }

  /** `widths` is how many delivered frames the picture is wide; where its sides differ from the frame's, it shows more. */
  private paintSetup(
    targets: ViewTargets,
    moment: Moment,
    setup: Setup,
    seconds: number,
    widths: number,
    piece: Piece | null = null,
  ): Development {
    const { plan, quality, shows } = moment;
    this.world.pose(plan, setup, seconds, quality);
    const view = swayingCameraAt(plan, setup, seconds);
    const aspect = view.frame.tanHalfWidth / view.frame.tanHalfHeight;
    const spare = piece ? piece.aspect / aspect : targets.sizes.width / targets.sizes.height / aspect;
    // The frame's own pane has its sides; only a thumbnail may be wider or higher.
    const fitted =
      widths === 1 ? ([Math.max(1, spare), Math.max(1, 1 / spare)] as const) : ([widths, widths] as const);
    const bending = aimFrame(this.camera, view, fitted);
    if (piece) aimPiece(this.camera, piece);
    const mirrorHeight = mirrorHeightUnder(plan, view.pose.position);
    const { camera } = this;
    const { strays, keep, filter } = strayLight(shows.filter ? setup.filter : null);
    const painted = this.painter.paint(targets, {
      camera,
      mirrorHeight,
      focus: quality.lens && shows.blur ? lensFocusAt(plan, setup, seconds) : null,
      streaks:
        quality.lens && shows.streaks
          ? { of: streaksAt(plan, setup, seconds, view), shape: streakShapeOf(view) }
          : null,
      strays,
      frameHeight: frameHeightIn(targets, camera, view.frame.tanHalfHeight),
      greyLuminance: greyLuminance(setup),
    });
    const glass = {
      focalMm: stateAt(plan, setup, seconds).focalMm,
      squeeze: glassOf(plan, setup).lens.squeeze,
    };
    return {
      ...painted,
      keep,
      ring: ringIn(targets, camera, filter, glass),
      grain: quality.lens && shows.grain ? grainIn(targets, camera, plan, setup, seconds) : null,
      exposure: exposureOf(setup),
      bending,
    };
  }

  private forget(name: string): void {
    this.painted.get(name)?.targets.dispose();
    this.painted.delete(name);
  }

  private painting(
    name: string,
    sizes: TargetSizes,
    inputs: readonly unknown[],
    paint: (targets: ViewTargets) => Development,
  ): Painted {
    const before = this.painted.get(name);
    const fits = before?.targets.fits(sizes) ?? false;
    if (before && fits && !differs(before.inputs, inputs)) return before;
    if (before && !fits) before.targets.dispose();
    const targets = before && fits ? before.targets : new ViewTargets(sizes);
    const painted = { targets, inputs, development: paint(targets) };
    this.painted.set(name, painted);
    this.paintings += 1;
    return painted;
  }
}

const FRAME = 'frame ';
const frameName = (setupId: string): string => FRAME + setupId;
const isFrame = (name: string): boolean => name.startsWith(FRAME);

function sizesOf(pane: Pane, pixelRatio: number, { samples, mirrorDivisor }: Quality): TargetSizes {
  return {
    width: Math.max(2, Math.round(pane.width * pixelRatio)),
    height: Math.max(2, Math.round(pane.height * pixelRatio)),
    samples,
    mirrorDivisor,
  };
}
