import { played } from '../plan/played';
import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { type CameraState, cameraStateAt } from './cameraKey';
import { extraction } from './gate';
import { poseOf } from './pose';
import { swayAt } from './sway';
import type { Camera, CameraPose, FrameShape } from './types';

export { spanOf } from './span';

/** The lens and the gate that a setup names in the plan's kit. A parsed plan always has them; else this throws. */
export function glassOf(
  plan: Plan,
  setup: Setup,
): { readonly lens: Lens; readonly gateMm: readonly [number, number] } {
  const lens = plan.kit.lenses.find((entry) => entry.id === setup.lens);
  const mode = plan.kit.bodies
    .find((entry) => entry.id === setup.body)
    ?.modes.find((entry) => entry.id === setup.mode);
  if (!lens || !mode) {
    throw new Error(
      `glassOf: setup "${setup.id}" names body "${setup.body}", mode "${setup.mode}", lens "${setup.lens}"`,
    );
  }
  return { lens, gateMm: mode.gateMm };
}

/** The delivered frame of a setup; of a zoom at its shortest unless a focal length is given, millimetres. */
export function frameShapeOf(plan: Plan, setup: Setup, focalMm?: number): FrameShape {
  const { lens, gateMm } = glassOf(plan, setup);
  const { tanHalfWidth, tanHalfHeight } = extraction(
    gateMm,
    focalMm ?? lens.focalMm,
    lens.squeeze,
    setup.delivery,
  );
  return { tanHalfWidth, tanHalfHeight, aspect: setup.delivery, distortion: bending(lens) };
}

/** The lens's distortion, or null when it draws straight lines straight. */
function bending(lens: Lens): FrameShape['distortion'] {
  const { distortion } = lens;
  if (!distortion) return null;
  return Object.values(distortion).some((coefficient) => coefficient !== 0) ? distortion : null;
}

/** Where a setup's camera is and how it looks at an instant of the action's clock, seconds, on its steady way. */
export function stateAt(plan: Plan, setup: Setup, seconds: number): CameraState {
  const { lens } = glassOf(plan, setup);
  return cameraStateAt(played(plan, setup), setup, seconds, lens, (focalMm) =>
    frameShapeOf(plan, setup, focalMm),
  );
}

const poseOfState = ({ position, headingDegrees, tiltDegrees, rollDegrees }: CameraState): CameraPose =>
  poseOf(position, headingDegrees, tiltDegrees, rollDegrees);

/** The setup's camera at an instant of the action's clock, seconds, on its steady way: this is what is judged. */
export function cameraAt(plan: Plan, setup: Setup, seconds: number): Camera {
  const state = stateAt(plan, setup, seconds);
  return { pose: poseOfState(state), frame: frameShapeOf(plan, setup, state.focalMm) };
}

/** The same with the unrest of whoever carries it: this is what is seen. */
export function swayingCameraAt(plan: Plan, setup: Setup, seconds: number): Camera {
  const { sway } = setup;
  if (!sway) return cameraAt(plan, setup, seconds);
  const state = stateAt(plan, setup, seconds);
  const unrest = swayAt(sway, seconds);
  const { right, up, forward } = poseOfState(state);
  const [aside, above, ahead] = unrest.metres;
  const position = [0, 1, 2].map(
    (axis) => state.position[axis] + right[axis] * aside + up[axis] * above + forward[axis] * ahead,
  );
  return {
    pose: poseOf(
      [position[0], position[1], position[2]],
      state.headingDegrees + unrest.headingDegrees,
      state.tiltDegrees + unrest.tiltDegrees,
      state.rollDegrees + unrest.rollDegrees,
    ),
    frame: frameShapeOf(plan, setup, state.focalMm),
  };
}
