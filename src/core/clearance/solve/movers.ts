import { anchorOf, carrierOf } from '../../plan/edits/anchorOf';
import { entourageOf } from '../../plan/edits/entourage';
import { itemOf, wishOf } from '../../plan/items';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';

/** One thing that may be moved, with all that goes along. */
export interface Mover {
  /** What is moved: a stand, where something is carried by one. */
  readonly id: string;
  readonly label: string;
  /** Gear and set pieces that go along, itself among them. */
  readonly members: ReadonlySet<string>;
}

const isFixed = (plan: Plan, id: string): boolean =>
  plan.gear.some(
    (gear) =>
      gear.id === id && (gear.kind === 'track' || (gear.kind === 'dolly' && gear.rides !== undefined)),
  );

/** What may move where nobody says: all gear that should keep out and is not locked, but track and what rides on it. */
export const movableIds = (plan: Plan): readonly string[] =>
  plan.gear
    .filter(({ id, locked }) => {
      const item = itemOf(plan, id);
      const carrier = itemOf(plan, carrierOf(plan, id) ?? id);
      const isLocked = locked === true || carrier?.record.locked === true;
      return item !== null && wishOf(item) === 'keep out' && !isLocked && !isFixed(plan, id);
    })
    .map(({ id }) => id);

/** Why one of the named things cannot be moved, as a sentence; null where it can. */
function whyNot(plan: Plan, id: string): string | null {
  const item = itemOf(plan, id);
  if (!item) return `There is no item “${id}” in this plan.`;
  const { label } = item.record;
  if (item.section === 'cast') return `${named(label)} acts: expected gear or set pieces that may move.`;
  const carrier = itemOf(plan, carrierOf(plan, id) ?? id);
  if (carrier?.record.locked) {
    const what =
      carrier.record.id === id
        ? named(label)
        : `${named(carrier.record.label)}, which carries ${named(label)},`;
    return `${what} is locked: unlock it, or leave it out.`;
  }
  if (item.record.locked) return `${named(label)} is locked: unlock it, or leave it out.`;
  if (isFixed(plan, id)) return `${named(label)} carries a camera: where that goes is for its setup to say.`;
  if (!anchorOf(plan, id)) return `${named(label)} has no place of its own that it could leave.`;
  return null;
}

/** The things that some ids move, each once, in the plan's order; a sentence where one of them cannot. */
export function moversOf(plan: Plan, ids: readonly string[]): readonly Mover[] | string {
  for (const id of ids) {
    const why = whyNot(plan, id);
    if (why !== null) return why;
  }
  const wanted = new Set(ids.map((id) => carrierOf(plan, id) ?? id));
  const found = [...plan.pieces, ...plan.gear]
    .filter(({ id }) => wanted.has(id))
    .map(({ id, label }): Mover => {
      const { carriers } = entourageOf(plan, [id], { evenLocked: false, decks: false });
      return { id, label, members: new Set([...carriers.keys()].filter((each) => itemOf(plan, each))) };
    });
  // A bag over the legs of a stand that may move goes with the stand.
  return found.filter(({ id }) => !found.some((other) => other.id !== id && other.members.has(id)));
}

/** Whether any of what goes along should keep out. */
export const keepsOut = (plan: Plan, { members }: Mover): boolean =>
  [...members].some((id) => {
    const item = itemOf(plan, id);
    return item !== null && wishOf(item) === 'keep out';
  });

/** The plan without what some movers take along. */
export function without(plan: Plan, movers: readonly Mover[]): Plan {
  const gone = new Set(movers.flatMap(({ members }) => [...members]));
  if (gone.size === 0) return plan;
  const isLeft = ({ id }: { readonly id: string }): boolean => !gone.has(id);
  return { ...plan, pieces: plan.pieces.filter(isLeft), gear: plan.gear.filter(isLeft) };
}
