import type { PerspectiveCamera, Scene, WebGLRenderer } from 'three';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { Still } from '../../desk/contactStills';
import type { PictureShows } from '../../desk/pictureShows';
import { LOOK_AROUND } from '../../desk/viewStore';
import { StillPrinter } from '../contact/stillPrinter';
import type { Development } from '../picture/develop';
import { type Exposure, walkExposure } from '../picture/exposure';
import { Painter, type Pane } from '../picture/painter';
import { type TargetSizes, ViewTargets } from '../picture/targets';
import { differs } from './differs';
import { drawnWith } from './drawnWith';
import { mirrorHeightUnder } from './mirrorHeight';
import type { Quality } from './quality';
import { SetupPainter } from './setupPainter';
import { secondsIn } from './setupView';
import type { ShadowTurn } from './shadowTurns';
import { strayLight } from './strayLight';
import { thumbInputs } from './thumbInputs';
import { copyShown, ThumbPrint, thumbSize } from './thumbs';
import { World } from './world';

/** All that is drawn from, as it is at one moment. */
export interface Moment {
  readonly plan: Plan;
  readonly seconds: number;
  readonly quality: Quality;
  /** What of the optics the setups' pictures show. */
  readonly shows: PictureShows;
  readonly pixelRatio: number;
  /** While a move plays, the number of the frame: mirrors and shadows take turns, and are late. Null at rest. */
  readonly turn: number | null;
  /** Whether pictures are drawn coarser since frames came late: then shadows take turns one by one. */
  readonly isStrained: boolean;
}

/** What the walk-round's picture is painted from. */
export interface WalkScene {
  readonly plan: Plan;
  readonly camera: PerspectiveCamera;
  /** All that its picture follows from, beside the moment: while these are the same it is not painted again. */
  readonly inputs: readonly unknown[];
  /** Ids of what is not shown. */
  readonly hidden: () => ReadonlySet<string>;
  /** Lays what is drawn beyond the set. */
  readonly layHelpers: (exposure: Exposure) => void;
}

/** The walk-round's mirror is drawn in odd frames, those of setups in even ones. */
const waitsForOdd = ({ turn }: Moment): boolean => turn !== null && turn % 2 === 0;
const waitsForEven = ({ turn }: Moment): boolean => turn !== null && turn % 2 === 1;

/** Half of the lamps' shadows in a frame; one, where that is too much. */
const shadowTurnOf = ({ turn, isStrained, quality }: Moment): ShadowTurn | null =>
  turn === null ? null : { frame: turn, most: isStrained ? 1 : Math.ceil(quality.rig.shadows / 2) };

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
  private readonly setups: SetupPainter;
  private readonly print = new ThumbPrint();
  private readonly stills: StillPrinter;
  private readonly painted = new Map<string, Painted>();
  private readonly printed = new Map<string, readonly unknown[]>();
  private lastPrinted: string | null = null;
  /** How many views have been painted: it stands still while nothing changes. */
  paintings = 0;

  constructor(
    private readonly renderer: WebGLRenderer,
    scene: Scene,
  ) {
    this.world = new World(renderer, scene);
    this.painter = new Painter(renderer, scene, this.world.materials, this.world.roof);
    this.setups = new SetupPainter(this.world, this.painter);
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
      [plan, seconds, setup, quality, shows, moment.turn === null, ...drawnWith()],
      (targets) =>
        this.setups.paint(targets, moment, {
          setup,
          seconds,
          widths: LOOK_AROUND,
          shadowTurn: shadowTurnOf(moment),
          mirrorMayBeLate: waitsForEven(moment),
        }),
    );
    this.painter.show(pane, painted.development);
  }

  /** The walk-round without what is hidden, into a pane of the canvas. */
  showWalk(moment: Moment, setup: Setup | null, walk: WalkScene, pane: Pane): void {
    const { seconds, quality, pixelRatio } = moment;
    const { plan, camera } = walk;
    const inputs = [...walk.inputs, seconds, quality, moment.turn === null, ...drawnWith()];
    const painted = this.painting('walk', sizesOf(pane, pixelRatio, quality), inputs, (targets) => {
      this.world.pose(plan, null, seconds, quality, shadowTurnOf(moment));
      const exposure = walkExposure(setup);
      walk.layHelpers(exposure);
      camera.updateMatrixWorld();
      const { x, y, z } = camera.position;
      const mirrorHeight = mirrorHeightUnder(plan, [x, y, z]);
      const { strays, keep } = strayLight(null);
      const painted = this.world.roof.without(walk.hidden(), () =>
        this.painter.paint(targets, {
          camera,
          mirrorHeight,
          mirrorMayBeLate: waitsForOdd(moment),
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

  /**
   * Copies the next thumbnail that is out of date onto its canvas, in turn; false when all are up to date. Where
   * `paneOf` says which pane of the stage lies under its canvas, it is shown there first and copied from there, less
   * fine and without a wait; thumbnails that are out of sight are left.
   */
  printNextThumb(
    moment: Moment,
    canvases: ReadonlyMap<string, HTMLCanvasElement>,
    paneOf: ((canvas: HTMLCanvasElement) => Pane | null) | null = null,
  ): boolean {
    const { plan, quality } = moment;
    for (const setupId of this.printed.keys()) if (!canvases.has(setupId)) this.printed.delete(setupId);
    const first = plan.setups.findIndex(({ id }) => id === this.lastPrinted) + 1;
    for (const setup of [...plan.setups.slice(first), ...plan.setups.slice(0, first)]) {
      const canvas = canvases.get(setup.id);
      if (!canvas) continue;
      const pane = paneOf?.(canvas) ?? null;
      if (paneOf && !pane) continue;
      const size = thumbSize(canvas, pane !== null);
      const seconds = secondsIn(plan, setup, moment.seconds);
      const inputs = thumbInputs(moment, { setup, seconds, canvas, size });
      if (!differs(this.printed.get(setup.id) ?? [], inputs)) continue;
      this.printed.set(setup.id, inputs);
      this.lastPrinted = setup.id;
      const sizes = { ...size, samples: quality.samples, mirrorDivisor: quality.mirrorDivisor };
      const painted = this.painting('thumb', sizes, inputs, (targets) =>
        this.setups.paint(targets, moment, {
          setup,
          seconds,
          widths: 1,
          shadowTurn: shadowTurnOf(moment),
        }),
      );
      if (pane) {
        this.painter.show(pane, painted.development);
        copyShown(this.renderer.domElement, pane, canvas, size);
      } else {
        this.painter.print(this.print.targetOf(size), painted.development);
        this.print.copyTo(canvas, this.renderer);
      }
      return true;
    }
    return false;
  }

  /** Prints the next piece of a picture that was asked for by itself; true when that was the last. */
  printStill(still: Still, quality: Quality, shows: PictureShows): boolean {
    const { plan, setup, widths } = still;
    const seconds = secondsIn(plan, setup, still.seconds);
    return this.stills.print(still, quality, (targets, piece) => {
      this.paintings += 1;
      return this.setups.paint(targets, { plan, quality, shows }, { setup, seconds, widths, piece });
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
    this.print.dispose();
    this.stills.dispose();
    this.painter.dispose();
    this.world.dispose();
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
