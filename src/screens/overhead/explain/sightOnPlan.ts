import { metresTo } from '../../../core/clearance/explain/metresTo';
import type { Explanation } from '../../../core/clearance/explain/types';
import type { Vec3 } from '../../../core/form/build/vector';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import type { Spot } from '../geometry/spots';

/** Words beside a place on the plan, [x, z], metres. */
export interface SightNote {
  readonly at: Spot;
  readonly kind: 'end' | 'mirror' | 'coverer';
  readonly words: string;
}

/** A line of sight as it is seen from above: places on the plan, [x, z], metres. */
export interface SightOnPlan {
  readonly kind: Explanation['kind'];
  /** From the lens as far as it goes unhindered, by way of a mirror. */
  readonly seen: readonly Spot[];
  /** From what hides it on; none where nothing does. */
  readonly hidden: readonly Spot[];
  /** The edges of the frame from the lens as far as the frame that is drawn across. */
  readonly edges: readonly (readonly [Spot, Spot])[];
  /** The frame across the line, its four corners. */
  readonly frame: readonly Spot[];
  readonly notes: readonly SightNote[];
}

const onPlan = ([x, , z]: Vec3): Spot => [x, z];

/** An explanation as a drawing on the plan; null where nothing is to be drawn, as behind the camera. */
export function sightOnPlan(plan: Plan, told: Explanation, lengths: LengthSystem): SightOnPlan | null {
  if (told.kind === 'behind') return null;
  const eye = onPlan(told.eye);
  const end = onPlan(told.end.at);
  const labelOf = (id: string): string => itemOf(plan, id)?.record.label ?? id;
  const far = (place: Vec3): string => formatLength(metresTo(told, place), lengths);
  const turn = told.kind === 'mirrored' ? [onPlan(told.mirror.at)] : [];
  const stop = told.kind === 'covered' ? onPlan(told.coverer.at) : end;
  const notes: SightNote[] = [
    {
      at: end,
      kind: 'end',
      words: told.kind === 'mirrored' ? told.end.part : `${told.end.part}, ${far(told.end.at)}`,
    },
  ];
  if (told.kind === 'mirrored')
    notes.push({
      at: onPlan(told.mirror.at),
      kind: 'mirror',
      words: `turns in ${labelOf(told.mirror.itemId)}, ${far(told.mirror.at)}`,
    });
  if (told.kind === 'covered')
    notes.push({
      at: stop,
      kind: 'coverer',
      words: `hidden by ${labelOf(told.coverer.itemId)}, ${far(told.coverer.at)}`,
    });
  const frame = told.frame.map(onPlan);
  return {
    kind: told.kind,
    seen: [eye, ...turn, stop],
    hidden: told.kind === 'covered' ? [stop, end] : [],
    edges: frame.map((corner) => [eye, corner] as const),
    frame,
    notes,
  };
}
