import { subtract, type Vec3 } from '../../form/build/vector';
import { isInFrame, projectPoint } from '../../optics/project';
import { formsThrough } from '../../optics/riding';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { meetsBefore } from '../../sight/rays';
import { type SightStage, type StagePart, stageOf, worldOf } from '../../sight/stage';
import { stageIn } from '../remedies/judge';
import type { KnownSetup } from '../remedies/known';
import type { Against } from '../remedies/needs';

/** Short of a point by so much of the way nothing counts as before it. */
const SHORT_OF = 1 - 1e-6;

/** Points of a part that stand for all of it: the farthest ones along each axis. */
function farthest(part: StagePart): readonly Vec3[] {
  const { positions } = part.shape;
  const found: number[] = [];
  for (let axis = 0; axis < 3; axis += 1) {
    let [low, high] = [axis, axis];
    for (let k = axis; k < positions.length; k += 3) {
      if (positions[k] < positions[low]) low = k;
      if (positions[k] > positions[high]) high = k;
    }
    found.push(low - axis, high - axis);
  }
  return [...new Set(found)].map((k) => worldOf(part, [positions[k], positions[k + 1], positions[k + 2]]));
}

/**
 * Says of places of a thing in frame whether it might be hidden there by what stays: quick, and sure only where it says
 * no, since a point of it lies open before the camera.
 */
export class Hiding {
  private readonly points = new Map<string, readonly Vec3[]>();
  private readonly stages = new Map<string, SightStage>();
  private likely: StagePart | null = null;

  /** The plan with the thing in its shape, and without all else that may move; what goes along is no cover. */
  constructor(
    private readonly plan: Plan,
    private readonly own: ReadonlySet<string>,
  ) {}

  /** Whether the thing, moved over the deck by [x, z] in metres, might be hidden from a camera that is against it. */
  mayHide({ one, id, watch }: Against, by: Spot): boolean {
    const seen = this.pointsOf(one, id)
      .map(([x, y, z]): Vec3 => [x + by[0], y, z + by[1]])
      .filter((point) => {
        const at = projectPoint(watch.camera, point);
        return at !== null && isInFrame(at);
      });
    // In frame between its points, or in a mirror alone: there is no cover that one point tells of.
    if (seen.length === 0) return false;
    const stage = this.stageAt(one, watch.seconds);
    return seen.every((point) => this.isCovered(stage, watch.camera.pose.position, point));
  }

  private pointsOf(one: KnownSetup, id: string): readonly Vec3[] {
    const key = `${one.setup.id} ${id}`;
    let points = this.points.get(key);
    if (!points) {
      points = stageIn(this.plan, one, id)?.parts.flatMap(farthest) ?? [];
      this.points.set(key, points);
    }
    return points;
  }

  private stageAt({ setup }: KnownSetup, seconds: number): SightStage {
    const key = `${setup.id} ${seconds}`;
    let stage = this.stages.get(key);
    if (!stage) {
      stage = stageOf(formsThrough(this.plan, setup, seconds).filter(({ id }) => !this.own.has(id)));
      this.stages.set(key, stage);
    }
    return stage;
  }

  private isCovered(stage: SightStage, eye: Vec3, point: Vec3): boolean {
    const ray = { origin: eye, direction: subtract(point, eye) };
    const covers = (part: StagePart): boolean =>
      part.shape.openness === null && meetsBefore(part, ray, SHORT_OF);
    if (this.likely && covers(this.likely)) return true;
    const found = stage.parts.find(covers);
    if (found) this.likely = found;
    return found !== undefined;
  }
}
