import type { Vec3 } from '../form/build/vector';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { hypot } from '../units/steadyMath';
import { spanOf, stateAt } from './camera';

const FRAME_SECONDS = 1 / 24;

/** How fast a camera is carried over its span. */
export interface Pace {
  /** Along its way, metres. */
  readonly metres: number;
  readonly fastestMetresPerSecond: number;
  /** When it is fastest, seconds on the action's clock. */
  readonly atSeconds: number;
}

const apart = (a: Vec3, b: Vec3): number => hypot(b[0] - a[0], b[1] - a[1], b[2] - a[2]);

/** Speed of a setup's camera at an instant, metres a second, over one frame about it. */
export function speedAt(plan: Plan, setup: Setup, seconds: number): number {
  const [from, to] = spanOf(plan, setup);
  const [start, end] = [
    Math.max(from, seconds - FRAME_SECONDS / 2),
    Math.min(to, seconds + FRAME_SECONDS / 2),
  ];
  if (end <= start) return 0;
  const way = apart(stateAt(plan, setup, start).position, stateAt(plan, setup, end).position);
  return way / (end - start);
}

/** The way of a setup's camera over its span, frame by frame. */
export function paceOf(plan: Plan, setup: Setup): Pace {
  const [from, to] = spanOf(plan, setup);
  const frames = Math.max(1, Math.round((to - from) / FRAME_SECONDS));
  const step = (to - from) / frames;
  let metres = 0;
  let fastest = 0;
  let atSeconds = from;
  let before = stateAt(plan, setup, from).position;
  for (let frame = 1; frame <= frames && step > 0; frame += 1) {
    const seconds = from + frame * step;
    const { position } = stateAt(plan, setup, seconds);
    const way = apart(before, position);
    before = position;
    metres += way;
    if (way / step <= fastest) continue;
    fastest = way / step;
    atSeconds = seconds - step / 2;
  }
  return { metres, fastestMetresPerSecond: fastest, atSeconds };
}
