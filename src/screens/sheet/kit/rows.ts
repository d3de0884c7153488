import { BUILT_IN_KIT } from '../../../core/kit/builtInKit';
import type { OwnKit } from '../../../core/kit/ownKit';
import { setupsWithBody, setupsWithLens } from '../../../core/plan/kitUse';
import type { Body, Lens } from '../../../core/plan/schema/kit';
import type { Plan } from '../../../core/plan/schema/plan';
import { NBSP } from '../../../core/units/numbers';
import { letterOf } from '../../../desk/choose';

/** Where a body or a lens is: in the plan, kept by this person, or with the program. */
export type Where = 'plan' | 'kept' | 'built in';
export type About = 'lenses' | 'bodies';

export const WHERE_WORDS: Readonly<Record<Where, string>> = {
  plan: 'In this plan',
  kept: 'Kept here',
  'built in': 'Built in',
};

export interface Chosen {
  readonly where: Where;
  readonly id: string;
}

/** `50 mm, 2×, T2.3 to T22`. */
export const lensFacts = ({ focalMm, longestMm, squeeze, widestStop, narrowestStop }: Lens): string =>
  [
    `${focalMm}${longestMm === undefined ? '' : ` to ${longestMm}`}${NBSP}mm`,
    squeeze === 1 ? 'spherical' : `${squeeze}×`,
    `T${widestStop} to T${narrowestStop}`,
  ].join(', ');

/** `3 modes, the first 22 × 18.59 mm`. */
export const bodyFacts = ({ modes }: Body): string =>
  `${modes.length === 1 ? '1 mode,' : `${modes.length} modes, the first`} ${modes[0].gateMm.join(' × ')}${NBSP}mm`;

/** Which setups use a lens, a body, or one mode of it: `setups A, C`, or nothing. */
export function usedWords(plan: Plan, about: About, id: string, modeId?: string): string {
  const setups = about === 'lenses' ? setupsWithLens(plan, id) : setupsWithBody(plan, id, modeId);
  if (setups.length === 0) return '';
  const letters = setups.map((setup) => letterOf(plan, setup.id)).join(', ');
  return `${setups.length === 1 ? 'setup' : 'setups'} ${letters}`;
}

export const lensesOf = (plan: Plan, own: OwnKit): Readonly<Record<Where, readonly Lens[]>> => ({
  plan: plan.kit.lenses,
  kept: own.lenses,
  'built in': BUILT_IN_KIT.lenses,
});

export const bodiesOf = (plan: Plan, own: OwnKit): Readonly<Record<Where, readonly Body[]>> => ({
  plan: plan.kit.bodies,
  kept: own.bodies,
  'built in': BUILT_IN_KIT.bodies,
});
