import { bearingOf } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { snapSpot } from '../../../core/plan/snap/snapSpot';
import { snapTargets } from '../../../core/plan/snap/snapTargets';
import { gridStep, lettingCatch } from '../../../desk/tools/catching';
import { snapSettings } from '../../../desk/tools/snapSettings';
import type { Spot } from '../geometry/spots';
import type { Pull } from './types';

let known: {
  readonly plan: Plan;
  readonly id: string;
  readonly targets: ReturnType<typeof snapTargets>;
} | null = null;

/** What the plan gives to catch on, but for the thing itself; reckoned once for a pull. */
function targetsBeside(plan: Plan, id: string) {
  if (known?.plan !== plan || known.id !== id)
    known = { plan, id, targets: snapTargets(plan, new Set([id])) };
  return known.targets;
}

/** Where a corner comes to rest: on edges, at ends, square to its neighbours, on the grid; with Shift along a bearing. */
export function snapCorner(
  plan: Plan,
  id: string,
  { to, straight, free, reachMetres }: Pull,
  beside: { readonly before: Spot | null; readonly after: Spot | null },
): Spot {
  if (free) return to;
  const settings = snapSettings.getState();
  const targets = targetsBeside(plan, id);
  const { before, after } = beside;
  const bearings = before && after ? [bearingOf([before[0], before[1]], [after[0], after[1]])] : [];
  return snapSpot({
    at: to,
    from: before,
    grid: gridStep(settings),
    reach: reachMetres,
    around: lettingCatch(targets, settings),
    square: settings.square
      ? [
          ...bearings.map((degrees) => ({ degrees, name: 'its neighbours' })),
          { degrees: targets.axisDegrees, name: 'the deck', loose: true },
        ]
      : [],
    inLine: settings.inLine,
    axisDegrees: targets.axisDegrees,
    straight,
  }).at;
}
