import { greyLuminance } from '../../core/light/exposure';
import { glassOf, stateAt, swayingCameraAt } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { PictureShows } from '../../desk/pictureShows';
import { FrameCamera } from '../cameras/frameCamera';
import { aimPiece, type Piece } from '../contact/pieces';
import type { Development } from '../picture/develop';
import { exposureOf } from '../picture/exposure';
import type { Painter } from '../picture/painter';
import type { ViewTargets } from '../picture/targets';
import { mirrorHeightUnder } from './mirrorHeight';
import type { Quality } from './quality';
import { aimFrame, lensFocusAt } from './setupView';
import type { ShadowTurn } from './shadowTurns';
import { frameHeightIn, grainIn, ringIn, strayLight } from './strayLight';
import { streakShapeOf, streaksAt } from './streaksAt';
import type { World } from './world';

/** What a setup's picture is drawn from, and how well. */
export interface Drawn {
  readonly plan: Plan;
  readonly quality: Quality;
  /** What of the optics the setups' pictures show. */
  readonly shows: PictureShows;
}

/** Which picture of a setup. */
export interface SetupView {
  readonly setup: Setup;
  /** Within the span that the setup covers. */
  readonly seconds: number;
  /** How many delivered frames the picture is wide; where it is 1 and the sides differ from the frame's, it shows more. */
  readonly widths: number;
  /** The part of it that is drawn; all of it without one. */
  readonly piece?: Piece | null;
  /** While a move plays; without one all shadows are up to date. */
  readonly shadowTurn?: ShadowTurn | null;
  readonly mirrorMayBeLate?: boolean;
}

/** Paints what setups see, for whoever shows it: the page, its thumbnails, pictures of their own. */
export class SetupPainter {
  private readonly camera = new FrameCamera();

  constructor(
    private readonly world: World,
    private readonly painter: Painter,
  ) {}

  /** Brings the world to the instant, paints it through the setup's lens and says how that is to be developed. */
  paint(targets: ViewTargets, { plan, quality, shows }: Drawn, of: SetupView): Development {
    const { setup, seconds, widths, piece = null, shadowTurn = null, mirrorMayBeLate = false } = of;
    this.world.pose(plan, setup, seconds, quality, shadowTurn);
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
      mirrorMayBeLate,
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
}
