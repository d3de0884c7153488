import { standUnder } from '../../../core/plan/edits/anchorOf';
import { setupsInOrder } from '../../../core/plan/nightOrder';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { departmentOf, type OneDepartment } from './departments';

/** Something on the roof that somebody sets, or stands at. */
export interface RoofThing {
  /** Of the item, or of the setup whose camera it is. */
  readonly id: string;
  readonly kind: 'gear' | 'performer' | 'camera';
  readonly label: string;
  /** What it carries, how high it is. */
  readonly detail: string;
  readonly department: OneDepartment;
}

/** What lies along a way, or over something that is listed. */
const NOT_LISTED: ReadonlySet<Gear['kind']> = new Set(['cable', 'sandbag', 'bulb string', 'practical']);

/** What stands on a stand, as the plan has it. */
export const carriedBy = (plan: Plan, id: string): readonly Gear[] =>
  plan.gear.filter((gear) => standUnder(gear) === id);

/** How high a thing is, in words: `to 3.85 m`; empty for what nobody asks it of. */
export function heightWords(gear: Gear, system: LengthSystem): string {
  if (gear.kind === 'stand' || gear.kind === 'ladder') return `to ${formatLength(gear.heightMetres, system)}`;
  return gear.kind === 'track' ? `${formatLength(gear.lengthMetres, system)} long` : '';
}

/** All that is set on a roof: gear with a foot of its own, the cast, the cameras in the night's order. */
export function roofThings(plan: Plan, system: LengthSystem): readonly RoofThing[] {
  const gear = plan.gear.flatMap((each): RoofThing[] => {
    if (NOT_LISTED.has(each.kind) || standUnder(each) !== null) return [];
    const carried = carriedBy(plan, each.id).map(({ label }) => label);
    return [
      {
        id: each.id,
        kind: 'gear',
        label: each.label,
        detail: [...carried, heightWords(each, system)].filter((word) => word !== '').join(', '),
        department: departmentOf(plan, each),
      },
    ];
  });
  const cast = plan.cast.map(
    ({ id, label, marks }): RoofThing => ({
      id,
      kind: 'performer',
      label,
      detail: marks.length === 1 ? '1 mark' : `${marks.length} marks`,
      department: 'cast',
    }),
  );
  const cameras = setupsInOrder(plan).map(
    (setup): RoofThing => ({
      id: setup.id,
      kind: 'camera',
      label: `Camera ${letterIn(plan, setup.id)}`,
      detail: setup.label,
      department: 'camera',
    }),
  );
  return [...gear, ...cameras, ...cast];
}

/** A setup's letter by its place in the plan. */
export const letterIn = (plan: Plan, setupId: string): string =>
  setupLetter(
    Math.max(
      0,
      plan.setups.findIndex(({ id }) => id === setupId),
    ),
  );
