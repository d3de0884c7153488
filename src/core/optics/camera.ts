import type { Lens } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { extraction } from './gate';
import { poseAt } from './pose';
import type { Camera, FrameShape } from './types';

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

/** The delivered frame of a setup. */
export function frameShapeOf(plan: Plan, setup: Setup): FrameShape {
  const { lens, gateMm } = glassOf(plan, setup);
  const { tanHalfWidth, tanHalfHeight } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
  return { tanHalfWidth, tanHalfHeight, aspect: setup.delivery, distortion: bending(lens) };
}

/** The lens's distortion, or null when it draws straight lines straight. */
function bending(lens: Lens): FrameShape['distortion'] {
  const { distortion } = lens;
  if (!distortion) return null;
  return Object.values(distortion).some((coefficient) => coefficient !== 0) ? distortion : null;
}

/** The setup's camera at an instant of the action's clock, seconds. */
export function cameraAt(plan: Plan, setup: Setup, seconds: number): Camera {
  return { pose: poseAt(setup, seconds), frame: frameShapeOf(plan, setup) };
}

/** The span of the action that a setup covers, [from, to] in seconds on the action's clock. */
export function spanOf(plan: Plan, setup: Setup): readonly [number, number] {
  const timeOf = (id: string) => {
    const beat = plan.beats.find((entry) => entry.id === id);
    if (!beat)
      throw new Error(`spanOf: setup "${setup.id}" names the beat "${id}", which the plan does not have`);
    return beat.atSeconds;
  };
  return [timeOf(setup.span.from), timeOf(setup.span.to)];
}
