import type { ItemForm } from '../form/types';
import { cameraAt } from '../optics/camera';
import { formsThrough } from '../optics/riding';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { instantsOf } from './frames';
import { type Grid, reachOf } from './grid';
import type { Instant } from './instant';
import { type SightStage, stageOf } from './stage';
import { type Interval, motionOver } from './sweep';

/** Frames between two instants that are always asked: a quarter of a second. */
const COARSE_FRAMES = 6;

/** The instants of a setup's span, and what there is at them. */
export interface Moments {
  /** Seconds on the action's clock, one a frame. */
  readonly instants: Float64Array;
  /** The frames that are always asked. */
  readonly coarse: readonly number[];
  /** Stage and camera at a frame. */
  readonly at: (frame: number) => Instant;
}

/**
 * The moments of a setup over a span, seconds; what was worked out of one is kept.
 * @param isOnStage which forms there is to be a stage of; all by default
 */
export function momentsOf(
  plan: Plan,
  setup: Setup,
  span: readonly [number, number],
  isOnStage?: (form: ItemForm) => boolean,
): Moments {
  const instants = instantsOf(span[0], span[1]);
  const last = instants.length - 1;
  const coarse: number[] = [];
  for (let frame = 0; frame <= last; frame += COARSE_FRAMES) coarse.push(frame);
  if (coarse[coarse.length - 1] !== last) coarse.push(last);
  const known = new Map<number, Instant>();
  let latest: SightStage | null = null;
  return {
    instants,
    coarse,
    at: (frame) => {
      let instant = known.get(frame);
      if (!instant) {
        const forms = formsThrough(plan, setup, instants[frame]);
        latest = stageOf(isOnStage ? forms.filter(isOnStage) : forms, latest);
        instant = { stage: latest, camera: cameraAt(plan, setup, instants[frame]) };
        known.set(frame, instant);
      }
      return instant;
    },
  };
}

/** The widest field of some grids. */
const widest = (grids: readonly Grid[]): Interval['field'] => {
  const reaches = [...new Set(grids)].map(reachOf);
  return {
    tanX: Math.max(...reaches.map(({ tanX }) => tanX)),
    tanY: Math.max(...reaches.map(({ tanY }) => tanY)),
  };
};

/** What happens from a frame to a later one; `grids`: those of all its frames. */
export const intervalOver = (
  at: Moments['at'],
  from: number,
  to: number,
  grids: readonly Grid[],
): Interval => ({
  stages: Array.from({ length: to - from + 1 }, (_, k) => at(from + k).stage),
  camera: at(from).camera,
  field: widest(grids),
  motion: motionOver(Array.from({ length: to - from + 1 }, (_, k) => at(from + k).camera)),
});
