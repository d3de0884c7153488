import { whereabouts } from '../../../core/form/figure/whereabouts';
import { cameraAt } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { LOOK_AROUND } from '../../../desk/viewStore';
import type { Spot } from '../geometry/spots';

/** Far enough for the edges to leave any sheet, metres. */
const FAR = 10_000;

/** Where the edges of a setup's frame run on the plan at an instant, metres. */
export interface FrameOnPlan {
  readonly apex: Spot;
  readonly edges: readonly [Spot, Spot];
  readonly lookAround: readonly [Spot, Spot];
  /** Where the focus is: the subject, or a point on the axis. */
  readonly focus: Spot;
}

/** The frame's left and right edges at the height of its axis, seen from above, from the entrance pupil. */
export function frameOnPlan(plan: Plan, setup: Setup, seconds: number): FrameOnPlan {
  const { pose, frame } = cameraAt(plan, setup, seconds);
  const apex: Spot = [pose.position[0], pose.position[2]];
  const edge = (tangent: number): Spot => {
    const [x, z] = [pose.forward[0] + pose.right[0] * tangent, pose.forward[2] + pose.right[2] * tangent];
    const size = Math.hypot(x, z) || 1;
    return [apex[0] + (x / size) * FAR, apex[1] + (z / size) * FAR];
  };
  const { tanHalfWidth } = frame;
  return {
    apex,
    edges: [edge(-tanHalfWidth), edge(tanHalfWidth)],
    lookAround: [edge(-tanHalfWidth * LOOK_AROUND), edge(tanHalfWidth * LOOK_AROUND)],
    focus: focusOf(plan, setup, seconds) ?? [
      apex[0] + pose.forward[0] * focusMetres(setup),
      apex[1] + pose.forward[2] * focusMetres(setup),
    ],
  };
}

const focusMetres = ({ focus }: Setup): number => ('metres' in focus ? focus.metres : 3);

function focusOf(plan: Plan, { focus }: Setup, seconds: number): Spot | null {
  if (!('follow' in focus)) return null;
  const performer = plan.cast.find(({ id }) => id === focus.follow);
  const place = performer ? whereabouts(performer, plan, seconds) : null;
  return place ? [place.at[0], place.at[2]] : null;
}
