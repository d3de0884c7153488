import type { PlanFault } from './faults';
import { doubles, unknown } from './references';
import type { Plan } from './schema/plan';

const named = (ids: readonly string[]): { id: string; label: string }[] =>
  ids.map((id) => ({ id, label: id }));

/** What the schema cannot see of the night: setups and performers that there are not, and those named twice. */
export function nightFaults({ night, setups, cast }: Plan): PlanFault[] {
  if (!night) return [];
  const setupIds = new Set(setups.map(({ id }) => id));
  const castIds = new Set(cast.map(({ id }) => id));
  const faults: PlanFault[] = [];
  night.order?.forEach((id, k) => {
    faults.push(...unknown(() => `night.order[${k}]`, id, setupIds, 'a setup'));
  });
  night.setups?.forEach(({ setup, cast: needed }, k) => {
    faults.push(...unknown(() => `night.setups[${k}].setup`, setup, setupIds, 'a setup'));
    needed?.forEach((id, place) => {
      faults.push(...unknown(() => `night.setups[${k}].cast[${place}]`, id, castIds, 'a performer'));
    });
    faults.push(...doubles(`night.setups[${k}].cast`, named(needed ?? [])));
  });
  night.cast?.forEach(({ performer }, k) => {
    faults.push(...unknown(() => `night.cast[${k}].performer`, performer, castIds, 'a performer'));
  });
  return [
    ...faults,
    ...doubles('The order of the night', named(night.order ?? [])),
    ...doubles('The night’s setups', named((night.setups ?? []).map(({ setup }) => setup))),
    ...doubles('The night’s cast', named((night.cast ?? []).map(({ performer }) => performer))),
    ...doubles('Rules for spares', named((night.packing?.spares ?? []).map(({ of }) => of))),
  ];
}
