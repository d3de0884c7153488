import { modelsAtHand } from '../form/models/modelShelf';
import type { ItemForm } from '../form/types';
import { cameraAt } from '../optics/camera';
import { formsThrough, isRiding } from '../optics/riding';
import { played } from '../plan/played';
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

/** Stages by the second, for all setups that have the same things around them. */
interface Shelf {
  readonly plan: Plan;
  readonly models: object;
  readonly stages: Map<number, SightStage>;
  /** How many parts its stages have together. */
  parts: number;
}

/** Of the plan that is read: most setups of a night cover the same action. */
let shelf: Shelf | null = null;
/** Some ten megabytes with what is remembered of them: ten seconds of a crowded roof. */
const MOST_PARTS = 200_000;

/** The shelf for a setup; null where it has things around it that others have not, or not there. */
function shelfFor(plan: Plan, setup: Setup): Shelf | null {
  if (played(plan, setup) !== plan || isRiding(plan, setup)) return null;
  if (shelf?.plan !== plan || shelf.models !== modelsAtHand())
    shelf = { plan, models: modelsAtHand(), stages: new Map(), parts: 0 };
  return shelf;
}

function putOnShelf(own: Shelf, seconds: number, stage: SightStage, isNew: boolean): void {
  const parts = own.parts + (isNew ? stage.parts.length : 0);
  if (parts > MOST_PARTS) return;
  own.parts = parts;
  own.stages.set(seconds, stage);
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
  const own = isOnStage ? null : shelfFor(plan, setup);
  let latest: SightStage | null = null;
  const stageAt = (seconds: number): SightStage => {
    const there = own?.stages.get(seconds);
    if (there) return there;
    const forms = formsThrough(plan, setup, seconds);
    const stage = stageOf(isOnStage ? forms.filter(isOnStage) : forms, latest);
    if (own) putOnShelf(own, seconds, stage, stage !== latest);
    return stage;
  };
  return {
    instants,
    coarse,
    at: (frame) => {
      let instant = known.get(frame);
      if (!instant) {
        latest = stageAt(instants[frame]);
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
