import { candelaTable } from '../../../core/form/photometry/candelaTable';
import { ownBeam, ownLumens } from '../../../core/form/photometry/ownBeam';
import type { Modifier } from '../../../core/plan/edits/setModifier';
import type { Distribution } from '../../../core/plan/schema/distribution';
import type { Gear } from '../../../core/plan/schema/gear';
import type { HeadClass } from '../../../core/plan/schema/kit';
import type { Plan } from '../../../core/plan/schema/plan';
import { amount, candelaText, lumenText, spreadText } from '../../../desk/photometry/words';

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
function modifierSentence(modifier: Modifier | undefined): string | null {
  if (modifier === undefined || modifier === 'barn doors') return null;
  return modifier === 'softbox' || modifier === 'lantern'
    ? `The ${modifier} on this lamp spreads its lumens in its own way.`
    : `The ${modifier} on this lamp narrows it to a beam of its own.`;
}

/** What is on a lamp and before it does to its measured table. */
export function changesOfTable(gear: Gear, distribution: Distribution): readonly string[] {
  if (gear.kind !== 'head') return [];
  const modifier = modifierSentence(gear.modifier);
  const isMean = gear.before?.diffusion !== undefined && !candelaTable(distribution).isAxial;
  return [
    ...(modifier === null ? [] : [modifier]),
    ...(modifier === null && isMean
      ? ['Its diffusion spreads the mean of this table round its axis, the same to all sides.']
      : []),
  ];
}
