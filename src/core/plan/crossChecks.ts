import { fault, type PlanFault, quoteFound } from './faults';
import { itemsOf } from './items';
import type { Plan } from './schema/plan';
import { setupFaults } from './setupChecks';

/** Ids that occur twice in a list, as faults that name both places. */
function doubles(
  where: string,
  entries: readonly { readonly id: string; readonly label: string }[],
): PlanFault[] {
  const seen = new Map<string, string>();
  const faults: PlanFault[] = [];
  for (const { id, label } of entries) {
    const earlier = seen.get(id);
    if (earlier !== undefined) {
      faults.push(
        fault(
          `${where} ${quoteFound(label)}`,
          `the id ${quoteFound(id)}, which ${quoteFound(earlier)} has too`,
          'an id of its own',
        ),
      );
    } else seen.set(id, label);
  }
  return faults;
}

function unknown(where: string, id: string, known: ReadonlySet<string>, what: string): PlanFault[] {
  return known.has(id) ? [] : [fault(where, quoteFound(id), `the id of ${what}`)];
}

/** What has an id and no name goes by its id. */
const unnamed = (entries: readonly { readonly id: string }[]): { id: string; label: string }[] =>
  entries.map(({ id }) => ({ id, label: id }));

const idsOf = (entries: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(entries.map((entry) => entry.id));

/** What a schema cannot see: ids that occur twice, and references that lead nowhere. */
export function crossCheck(plan: Plan): PlanFault[] {
  const { kit } = plan;
  const beatIds = idsOf(plan.beats);
  const headIds = idsOf(kit.heads);
  const standClassIds = idsOf(kit.stands);
  const socketIds = idsOf(plan.gear.filter((gear) => gear.kind !== 'cable'));
  const standIds = idsOf(plan.gear.filter((gear) => gear.kind === 'stand'));
  const setupIds = idsOf(plan.setups);
  const faults: PlanFault[] = [
    ...doubles(
      'Item',
      itemsOf(plan).map((item) => item.record),
    ),
    ...doubles('Setup', plan.setups),
    ...doubles('Beat', plan.beats),
    ...doubles('Body', kit.bodies),
    ...kit.bodies.flatMap(({ label, modes }) => doubles(`Body ${quoteFound(label)}, mode`, modes)),
    ...doubles('Lens', kit.lenses),
    ...doubles('Head class', kit.heads),
    ...doubles('Stand class', kit.stands),
    ...doubles('Tape', unnamed(plan.tapes ?? [])),
    ...doubles('Frame line', plan.frameLines ?? []),
  ];
  for (const piece of plan.pieces) {
    const where = `Set piece ${quoteFound(piece.label)}`;
    if ('openings' in piece) faults.push(...doubles(`${where}, opening`, unnamed(piece.openings ?? [])));
    if ('holes' in piece) faults.push(...doubles(`${where}, hole`, unnamed(piece.holes ?? [])));
  }
  for (const gear of plan.gear) {
    const where = `Gear ${quoteFound(gear.label)}`;
    if ('head' in gear)
      faults.push(...unknown(`${where}, head`, gear.head, headIds, "a head class in the plan's kit"));
    if ('stand' in gear)
      faults.push(
        ...unknown(`${where}, stand`, gear.stand, standClassIds, "a stand class in the plan's kit"),
      );
    if ('place' in gear && 'on' in gear.place)
      faults.push(...unknown(`${where}, place.on`, gear.place.on, standIds, 'a stand'));
    if (gear.kind === 'dolly' && gear.rides !== undefined)
      faults.push(...unknown(`${where}, rides`, gear.rides, setupIds, 'a setup'));
    if (gear.kind === 'cable' && gear.plugs)
      for (const [end, plug] of Object.entries(gear.plugs))
        if (plug !== undefined)
          faults.push(...unknown(`${where}, plugs.${end}`, plug, socketIds, 'gear that is no cable'));
  }
  for (const performer of plan.cast) {
    const where = `Performer ${quoteFound(performer.label)}`;
    faults.push(...doubles(`${where}, mark`, unnamed(performer.marks)));
    for (const mark of performer.marks) {
      faults.push(...unknown(`${where}, mark ${quoteFound(mark.id)}, beat`, mark.beat, beatIds, 'a beat'));
    }
  }
  return [...faults, ...setupFaults(plan)];
}
