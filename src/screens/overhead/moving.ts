import { anchorOf, carrierOf } from '../../core/plan/edits/anchorOf';
import { moveItem } from '../../core/plan/edits/moveItem';
import { tidyMetres } from '../../core/plan/edits/tidy';
import type { Plan } from '../../core/plan/schema/plan';
import type { Spot } from './geometry/spots';

/** The plan with several items moved by [x, z], metres, each once: what a stand carries goes with its stand. */
export function movedBy(plan: Plan, ids: readonly string[], by: Spot): Plan {
  const roots = new Set(ids.map((id) => carrierOf(plan, id) ?? id));
  let moved = plan;
  for (const id of roots) {
    const anchor = anchorOf(plan, id);
    if (anchor) {
      moved = moveItem(moved, { id, to: [tidyMetres(anchor[0] + by[0]), tidyMetres(anchor[1] + by[1])] });
    }
  }
  return moved;
}
