import { isEverLit, isLamp } from '../../plan/cues';
import type { Plan } from '../../plan/schema/plan';
import { nightOf } from '../nightOf';
import type { Night } from '../types';
import { ofCamera } from './ofCamera';
import { ofFloor } from './ofFloor';
import { ofGrip } from './ofGrip';
import { ofLight } from './ofLight';
import { ofPower } from './ofPower';
import { oneLine } from './tally';
import { DEPARTMENTS, type PackingLine, type PackingNeed } from './types';

/** Hours from when the first lamp is set to the last shot. */
function workHours({ schedule: { stretches, lastShot }, call }: Night): number {
  const from = stretches.find(({ doing }) => doing === 'light')?.from ?? call;
  return Math.max(0, lastShot - from) / 60;
}

/** What a roof at night has with it whatever is shot. Source: common practice, no source */
function ofSafety(plan: Plan): readonly PackingNeed[] {
  const generators = plan.gear.filter(({ kind }) => kind === 'generator');
  const isLit = plan.gear.some((gear) => isLamp(gear) && isEverLit(gear));
  const beside = generators.map(({ label }) => `beside ${label}`);
  return [
    ...oneLine('safety', 'Fire extinguisher', generators.length + (isLit ? 1 : 0), {
      detail: [...beside, ...(isLit ? ['at the set'] : [])].join(', '),
      itemIds: generators.map(({ id }) => id),
    }),
    ...oneLine('safety', 'First-aid kit', plan.setups.length > 0 ? 1 : 0),
  ];
}

/** What is taken on top of a need by the plan's rules: one for every so many, at least one. */
function withSpare(plan: Plan, need: PackingNeed): PackingLine {
  const rule = plan.night?.packing?.spares?.find(({ of }) => of === need.spared);
  return { ...need, spare: rule ? Math.ceil(need.count / rule.oneFor - 1e-9) : 0 };
}

/**
 * All that is to be carried up for a plan's night, by department: what stands on the roof added up, and what follows from
 * it and from the night's hours. An estimate for planning: what is asked for by law, and how much is enough, local codes
 * and a competent person decide.
 */
export function packingOf(plan: Plan, night: Night = nightOf(plan)): readonly PackingLine[] {
  const hours = workHours(night);
  const needs = [
    ...ofCamera(plan, hours),
    ...ofLight(plan),
    ...ofGrip(plan),
    ...ofPower(plan, hours),
    ...ofFloor(plan, night.schedule.end.wettings),
    ...ofSafety(plan),
  ];
  return DEPARTMENTS.flatMap((department) =>
    needs.filter((need) => need.department === department).map((need) => withSpare(plan, need)),
  );
}
