import type { Carried, Gear } from '../../plan/schema/gear';
import type { HeadClass, StandClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';

/** The record of one kind of gear. */
export type GearOf<Kind extends Gear['kind']> = Extract<Gear, { kind: Kind }>;
export type Stand = GearOf<'stand'>;

/** A plan is cross-checked when it is read, so a reference that leads nowhere is our own mistake. */
function found<T>(entry: T | undefined, where: string, id: string, expected: string): T {
  if (entry === undefined) throw new Error(`${where}: found “${id}”, expected the id of ${expected}`);
  return entry;
}

/** The class of a stand in the plan's kit. Throws where the plan has none of that id. */
export function standClassOf(stand: Stand, plan: Plan): StandClass {
  const entry = plan.kit.stands.find(({ id }) => id === stand.stand);
  return found(entry, `Gear “${stand.label}”, stand`, stand.stand, 'a stand class in the plan’s kit');
}

/** The class of a lamp in the plan's kit. Throws where the plan has none of that id. */
export function headClassOf(lamp: { readonly label: string; readonly head: string }, plan: Plan): HeadClass {
  const entry = plan.kit.heads.find(({ id }) => id === lamp.head);
  return found(entry, `Gear “${lamp.label}”, head`, lamp.head, 'a head class in the plan’s kit');
}

/** The stand that carries a piece of gear; null where it has a place of its own. Throws where there is no such stand. */
export function carrierOf(
  gear: { readonly label: string; readonly place: Carried },
  plan: Plan,
): Stand | null {
  const { place } = gear;
  if ('at' in place) return null;
  const entry = plan.gear.find((other): other is Stand => other.kind === 'stand' && other.id === place.on);
  return found(entry, `Gear “${gear.label}”, place.on`, place.on, 'a stand');
}

/**
 * The records that a piece of gear takes its form from: its own, the stand that carries it, and their classes.
 * While each of them is the same object, `gearParts` gives the same form.
 */
export function recordsOf(gear: Gear, plan: Plan): readonly object[] {
  const records: object[] = [gear];
  if ('head' in gear) records.push(headClassOf(gear, plan));
  const stand = gear.kind === 'stand' ? gear : 'place' in gear ? carrierOf(gear, plan) : null;
  if (stand && stand !== gear) records.push(stand);
  if (stand) records.push(standClassOf(stand, plan));
  return records;
}
