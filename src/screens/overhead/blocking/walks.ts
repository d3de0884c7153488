import { type WalkReading, walksOf } from '../../../core/form/figure/walks';
import type { Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { clearWay, wayMetres } from '../../../core/plan/walkWays/clearWay';
import { type WalkHit, walkHits } from '../../../core/plan/walkWays/hits';
import type { Spot } from '../geometry/spots';
import { shown } from '../shown';

/** A walk of somebody who is not hidden, and what it meets first. */
export interface RoofWalk {
  readonly performer: Performer;
  readonly walk: WalkReading;
  readonly hit: WalkHit | null;
}

/** A way that keeps clear of all, and how long it is with the marks at its ends. */
export interface ClearWay {
  readonly through: readonly Spot[];
  /** With both marks. */
  readonly path: readonly Spot[];
  readonly metres: number;
}

/** What is reckoned of a walk holds for the pieces that it was reckoned among. */
interface Known<Value> {
  readonly pieces: Plan['pieces'];
  readonly value: Value;
}
const hitKept = new WeakMap<WalkReading, Known<WalkHit | null>>();
const wayKept = new WeakMap<WalkReading, Known<ClearWay | null>>();

function keptFor<Value>(
  known: WeakMap<WalkReading, Known<Value>>,
  walk: WalkReading,
  { pieces }: Plan,
  reckon: () => Value,
): Value {
  const before = known.get(walk);
  if (before?.pieces === pieces) return before.value;
  const value = reckon();
  known.set(walk, { pieces, value });
  return value;
}

function hitOf(plan: Plan, performer: Performer, walk: WalkReading): WalkHit | null {
  return keptFor(hitKept, walk, plan, () => {
    const [from, to] = [walk.fromMark, walk.toMark].map((id) =>
      performer.marks.find((each) => each.id === id),
    );
    return (from && to && walkHits(plan, from, to, walk.path)[0]) ?? null;
  });
}

/** All walks that are drawn. */
export const roofWalks = (plan: Plan): readonly RoofWalk[] =>
  shown(plan.cast).flatMap((performer) =>
    walksOf(performer, plan).map((walk) => ({ performer, walk, hit: hitOf(plan, performer, walk) })),
  );

/** The clear way for a walk that meets something; null where it meets nothing, or where there is none. */
export function clearWayFor(plan: Plan, { performer, walk, hit }: RoofWalk): ClearWay | null {
  if (!hit) return null;
  return keptFor(wayKept, walk, plan, () => {
    const through = clearWay(plan, performer, walk.fromMark, walk.toMark);
    const [from, to] = [walk.path[0], walk.path[walk.path.length - 1]];
    if (!through || !from || !to) return null;
    return { through, path: [from, ...through, to], metres: wayMetres(from, through, to) };
  });
}
