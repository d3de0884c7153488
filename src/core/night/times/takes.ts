import type { NightCost, NightPhase, NightSetup } from '../../plan/schema/night';
import type { Plan } from '../../plan/schema/plan';

/** What setups take that say nothing of it, minutes. Source: common practice, no source */
export const USUAL_TIMES: Readonly<Record<NightPhase, number>> = {
  rig: 15,
  light: 25,
  rehearse: 10,
  shoot: 30,
  move: 5,
};

/**
 * What changes cost where a plan says nothing of it, minutes: each once, but a lamp for every one that is set to another
 * level, a half turn by the share that the camera is turned, and every ten metres that it is carried.
 * Source: common practice, no source
 */
export const USUAL_COSTS: Readonly<Record<NightCost, number>> = {
  lens: 3,
  body: 10,
  filter: 2,
  support: 8,
  lighting: 20,
  head: 1,
  halfTurn: 20,
  tenMetres: 3,
  wetDown: 15,
};

/** Where a plan says nothing of them. Source: common practice, no source */
export const USUAL_NIGHT = { meal: { afterHours: 6, minutes: 45 }, strike: 45, dries: 45 } as const;

/** What the night knows of a setup; nothing but its id where it says nothing. */
export const needsOf = ({ night }: Pick<Plan, 'night'>, setupId: string): NightSetup =>
  night?.setups?.find(({ setup }) => setup === setupId) ?? { setup: setupId };

/** What a setup takes, minutes. */
export function takesOf(plan: Pick<Plan, 'night'>, setupId: string): Readonly<Record<NightPhase, number>> {
  const own = needsOf(plan, setupId);
  const all = plan.night?.times;
  const of = (phase: NightPhase): number => own[phase] ?? all?.[phase] ?? USUAL_TIMES[phase];
  return {
    rig: of('rig'),
    light: of('light'),
    rehearse: of('rehearse'),
    shoot: of('shoot'),
    move: of('move'),
  };
}

/** What a change costs, minutes. */
export const costOf = ({ night }: Pick<Plan, 'night'>, cost: NightCost): number =>
  night?.costs?.[cost] ?? USUAL_COSTS[cost];

/** What every change costs, minutes. */
export function costsOf(plan: Pick<Plan, 'night'>): Readonly<Record<NightCost, number>> {
  const of = (cost: NightCost): number => costOf(plan, cost);
  return {
    lens: of('lens'),
    body: of('body'),
    filter: of('filter'),
    support: of('support'),
    lighting: of('lighting'),
    head: of('head'),
    halfTurn: of('halfTurn'),
    tenMetres: of('tenMetres'),
    wetDown: of('wetDown'),
  };
}
