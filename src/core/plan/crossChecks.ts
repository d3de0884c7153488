import { castFaults } from './castChecks';
import { type PlanFault, quoteFound } from './faults';
import { itemsOf } from './items';
import { lightFaults } from './lightChecks';
import { nightFaults } from './nightChecks';
import { doubles, unknown, unnamed } from './references';
import type { Plan } from './schema/plan';
import { setupFaults } from './setupChecks';

const idsOf = (entries: readonly { readonly id: string }[]): ReadonlySet<string> =>
  new Set(entries.map((entry) => entry.id));

/** What a schema cannot see: ids that occur twice, and references that lead nowhere. */
export function crossCheck(plan: Plan): PlanFault[] {
  const { kit } = plan;
  const items = itemsOf(plan);
  const headIds = idsOf(kit.heads);
  const standClassIds = idsOf(kit.stands);
  const socketIds = idsOf(plan.gear.filter((gear) => gear.kind !== 'cable'));
  const standIds = idsOf(plan.gear.filter((gear) => gear.kind === 'stand'));
  const setupIds = idsOf(plan.setups);
  const beatIds = idsOf(plan.beats);
  const faults: PlanFault[] = [
    ...doubles(
      'Item',
      items.map((item) => item.record),
    ),
    ...doubles('Setup', plan.setups),
    ...doubles('Beat', plan.beats),
    ...doubles('Body', kit.bodies),
    ...kit.bodies.flatMap(({ label, modes }) => doubles(`Body ${quoteFound(label)}, mode`, modes)),
    ...doubles('Lens', kit.lenses),
    ...doubles('Head class', kit.heads),
    ...doubles('Stand class', kit.stands),
    ...lightFaults(kit.heads),
    ...doubles('Tape', unnamed(plan.tapes ?? [])),
    ...doubles('Meter', plan.probes ?? []),
    ...doubles('Wet area', unnamed(plan.ground.areas ?? [])),
    ...doubles('Frame line', plan.frameLines ?? []),
    ...doubles('Pass', unnamed(plan.passes ?? [])),
    ...doubles('Line', unnamed(plan.lines ?? [])),
    ...doubles('Way out', plan.cautions?.waysOut ?? []),
    ...doubles(
      'Note on a caution',
      (plan.cautions?.notes ?? []).map(({ key }) => ({ id: key, label: key })),
    ),
  ];
  for (const { record } of items)
    record.shows?.forEach(({ setup }, index) => {
      const where = (): string => `Item ${quoteFound(record.label)}, shows[${index}].setup`;
      faults.push(...unknown(where, setup, setupIds, 'a setup'));
    });
  for (const piece of plan.pieces) {
    const within = (what: string, entries: readonly { readonly id: string }[]): void => {
      faults.push(...doubles(`Set piece ${quoteFound(piece.label)}, ${what}`, unnamed(entries)));
    };
    if ('openings' in piece && piece.openings) within('opening', piece.openings);
    if ('holes' in piece && piece.holes) within('hole', piece.holes);
  }
  for (const gear of plan.gear) {
    const check = (field: string, id: string, known: ReadonlySet<string>, what: string): void => {
      faults.push(...unknown(() => `Gear ${quoteFound(gear.label)}, ${field}`, id, known, what));
    };
    if ('head' in gear) check('head', gear.head, headIds, 'a head class in the plan’s kit');
    if ('cues' in gear)
      gear.cues?.forEach(({ beat }, index) => {
        if (beat !== undefined) check(`cues[${index}].beat`, beat, beatIds, 'a beat');
      });
    if ('stand' in gear) check('stand', gear.stand, standClassIds, 'a stand class in the plan’s kit');
    if ('place' in gear && 'on' in gear.place) check('place.on', gear.place.on, standIds, 'a stand');
    if (gear.kind === 'dolly' && gear.rides !== undefined) check('rides', gear.rides, setupIds, 'a setup');
    if (gear.kind === 'cable' && gear.plugs)
      for (const [end, plug] of Object.entries(gear.plugs))
        if (plug !== undefined) check(`plugs.${end}`, plug, socketIds, 'gear that is no cable');
  }
  return [...faults, ...castFaults(plan), ...setupFaults(plan), ...nightFaults(plan)];
}
