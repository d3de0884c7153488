import { tidyCoordinate, tidyMetres } from '../plan/edits/tidy';
import type { Plan } from '../plan/schema/plan';
import type { CameraKey, Setup } from '../plan/schema/setup';
import { glassOf, stateAt } from './camera';
import { alongAt, keysOf } from './cameraKey';
import { momentOf } from './moments';
import { keyAt } from './pose';

const tidyDegrees = (degrees: number): number => Math.round(degrees * 1e6) / 1e6 + 0;
const tidySeconds = (seconds: number): number => Math.round(seconds * 1e4) / 1e4 + 0;

/** A moment of the action's clock as a key says it: by the clock, or from a beat of the plan on where one is named. */
export function momentAs(
  plan: Pick<Plan, 'beats'>,
  seconds: number,
  beat: string | undefined,
): Pick<CameraKey, 'atSeconds' | 'beat'> {
  if (beat === undefined) return { atSeconds: tidySeconds(Math.max(0, seconds)) };
  const from = momentOf(plan, { atSeconds: 0, beat });
  return { atSeconds: tidySeconds(Math.max(0, seconds - from)), beat };
}

/**
 * A key that holds a setup's camera as it is at an instant of the action's clock: its place, on its track where it has
 * one, its pan by the numbers of the keys around it, its tilt and roll, and how far a zoom is in.
 */
export function heldKey(plan: Plan, setup: Setup, seconds: number, beat?: string): CameraKey {
  const state = stateAt(plan, setup, seconds);
  const near = keyAt({ ease: setup.move.ease, keys: keysOf(plan, setup) }, seconds).headingDegrees;
  const wholeTurns = Math.round((near - state.headingDegrees) / 360) * 360;
  const along = alongAt(plan, setup, seconds);
  const { lens } = glassOf(plan, setup);
  return {
    ...momentAs(plan, seconds, beat),
    position: [
      tidyCoordinate(state.position[0]),
      tidyCoordinate(state.position[1]),
      tidyCoordinate(state.position[2]),
    ],
    headingDegrees: tidyDegrees(state.headingDegrees + wholeTurns),
    tiltDegrees: tidyDegrees(state.tiltDegrees),
    rollDegrees: tidyDegrees(state.rollDegrees),
    ...(along !== null && { alongMetres: tidyMetres(along) }),
    ...(lens.longestMm !== undefined && { focalMm: tidyMetres(state.focalMm) }),
  };
}
