import { whereabouts } from '../../../core/form/figure';
import type { Point } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';

/** A face is as large as this about the point between its eyes, metres. Source: common practice, no source */
const FACE_METRES = 0.15;

/** The performer whose face lies at a point at an instant, by id; null where none does. */
export function aimedAt(plan: Plan, [x, y, z]: Point, seconds: number): string | null {
  const found = plan.cast.find((performer) => {
    const eyes = whereabouts(performer, plan, seconds)?.eyes;
    return eyes && Math.hypot(eyes[0] - x, eyes[1] - y, eyes[2] - z) < FACE_METRES;
  });
  return found?.id ?? null;
}
