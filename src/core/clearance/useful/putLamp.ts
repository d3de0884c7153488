import type { Vec3 } from '../../form/build/vector';
import { moveItem } from '../../plan/edits/moveItem';
import { reshapeItem } from '../../plan/edits/reshapeItem';
import { setAim } from '../../plan/edits/setAim';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';

/** Where a lamp goes, metres, what it is aimed at, and the dim that it gets; null where that stays. */
export interface LampPlace {
  readonly lampId: string;
  readonly to: Spot;
  readonly aim: Vec3;
  readonly dim: number | null;
}

/**
 * Moves a lamp, with the stand that carries it and all that goes along, aims it if it can be aimed, and dims it. What is
 * locked stays in its place.
 */
export function putLamp(plan: Plan, { lampId, to, aim, dim }: LampPlace): Plan {
  const aimed = setAim(moveItem(plan, { id: lampId, to }), { id: lampId, aim: [aim[0], aim[1], aim[2]] });
  return dim === null ? aimed : reshapeItem(aimed, { id: lampId, patch: { dim } });
}
