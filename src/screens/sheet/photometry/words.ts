import { candelaTable, fullAngleDegrees } from '../../../core/form/photometry/candelaTable';
import { ownBeam, ownLumens } from '../../../core/form/photometry/ownBeam';
import type { Distribution } from '../../../core/plan/schema/distribution';
import type { Gear } from '../../../core/plan/schema/gear';
import type { HeadClass } from '../../../core/plan/schema/kit';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatDegrees } from '../../../core/units/angles';
import { formatNumber, NBSP } from '../../../core/units/numbers';

/** A number of candela or lumens with its thousands apart, as coarse as its size. */
export const amount = (value: number): string =>
  value < 10 ? formatNumber(value, 1) : Math.round(value).toLocaleString('en-GB');

export const candelaText = (candela: number): string => `${amount(candela)}${NBSP}cd`;
export const lumenText = (lumens: number): string => `${amount(lumens)}${NBSP}lm`;

const angleText = (degrees: number): string => (degrees >= 360 ? 'all round' : formatDegrees(degrees, 1));

/** A full angle of a table: one where it is the same all round, else across and upright. */
export function spreadText(distribution: Distribution, share: number): string {
  const table = candelaTable(distribution);
  if (table.isAxial) return angleText(fullAngleDegrees(distribution, 0, share));
  const [across, upright] = [0, 90].map((plane) => fullAngleDegrees(distribution, plane, share));
  if (Math.abs(across - upright) < 0.05) return angleText(across);
  return `${angleText(across)} by ${angleText(upright)}`;
}

/** What the plot shows, in one sentence for who does not see it. */
export function plotSentence(distribution: Distribution): string {
  const { peakCandela, candelaAt } = candelaTable(distribution);
  return `Candela by the angle off the axis: ${amount(candelaAt(0, 0))} along it, ${amount(peakCandela)} at most; beam ${spreadText(distribution, 0.5)}, field ${spreadText(distribution, 0.1)}.`;
}

/** How many lamps of the plan are of a class, a string as one. */
export const lampsOfClass = (plan: Plan, headId: string): number =>
  plan.gear.filter((gear) => 'head' in gear && gear.head === headId).length;

/** What is published of a class, where nothing was measured. */
export const publishedSentence = (headClass: HeadClass): string =>
  `${candelaText(ownBeam(headClass).peakCandela)} as published of its class, about ${lumenText(ownLumens(headClass))}.`;

/** What a modifier does to a measured table; null where it leaves it. */
export function modifierSentence(gear: Gear): string | null {
  const modifier = gear.kind === 'head' ? gear.modifier : undefined;
  if (modifier === undefined || modifier === 'barn doors') return null;
  return modifier === 'softbox' || modifier === 'lantern'
    ? `The ${modifier} on this lamp spreads its lumens in its own way.`
    : `The ${modifier} on this lamp narrows it to a beam of its own.`;
}
