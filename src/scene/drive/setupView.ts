import { rimOf } from '../../core/optics/bokeh';
import { glassOf, spanOf, stateAt } from '../../core/optics/camera';
import { undistort } from '../../core/optics/distortion';
import { focusAt } from '../../core/optics/focusAt';
import type { Camera } from '../../core/optics/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { FrameCamera } from '../cameras/frameCamera';
import type { Development } from '../picture/develop';
import type { LensFocus } from '../picture/lens';

/** A lens that bends more than this would need a straight picture this many times as wide: the rest is left out. */
const MOST_OVERSCAN = 1.6;

/** The instant of the action at which a setup is shown: within what it covers. */
export function secondsIn(plan: Plan, setup: Setup, seconds: number): number {
  const [from, to] = spanOf(plan, setup);
  return Math.min(to, Math.max(from, seconds));
}

/**
 * Points a camera along a setup's lens; `widths` are how many delivered frames the picture is wide and high.
 * Gives what developing needs to bend the straight picture as the lens does; null for a lens without distortion.
 */
export function aimFrame(
  target: FrameCamera,
  camera: Camera,
  widths: readonly [number, number],
): Development['bending'] {
  const { tanHalfWidth, tanHalfHeight, distortion } = camera.frame;
  const shown = [tanHalfWidth * widths[0], tanHalfHeight * widths[1]] as const;
  target.setPose(camera.pose);
  if (!distortion) {
    target.setHalves(...shown);
    return null;
  }
  let overscan = 1;
  for (const [x, y] of [
    [1, 0],
    [0, 1],
    [1, 1],
    [-1, 1],
    [0, -1],
    [-1, 0],
    [1, -1],
    [-1, -1],
  ] as const) {
    const straight = undistort(distortion, x * shown[0], y * shown[1]);
    const [sx, sy] = straight ?? [MOST_OVERSCAN * x * shown[0], MOST_OVERSCAN * y * shown[1]];
    overscan = Math.max(overscan, Math.abs(sx) / shown[0], Math.abs(sy) / shown[1]);
  }
  overscan = Math.min(overscan, MOST_OVERSCAN);
  const drawn = [shown[0] * overscan, shown[1] * overscan] as const;
  target.setHalves(...drawn);
  return { distortion, shown, drawn };
}

/** How the setup's lens is focused at an instant; null where it follows somebody who is nowhere. */
export function lensFocusAt(plan: Plan, setup: Setup, seconds: number): LensFocus | null {
  const { lens, gateMm } = glassOf(plan, setup);
  const focusMetres = focusAt(plan, setup, seconds);
  if (focusMetres === null) return null;
  const { focalMm } = stateAt(plan, setup, seconds);
  const circleMm = (lens.imageCircleMm ?? Math.hypot(...gateMm)) / 2;
  return {
    pupilMetres: focalMm / 1000 / setup.stop,
    squeeze: lens.squeeze,
    focusMetres,
    rim: rimOf(lens, focalMm, setup.stop),
    circle: [(circleMm * lens.squeeze) / focalMm, circleMm / focalMm],
  };
}
