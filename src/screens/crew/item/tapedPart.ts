import type { TapedSet } from '../../../core/form/tape/tape';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';

/** What has to be said beside two tapes: what they end at, the side, how far off a centimetre puts it. */
export function tapedNotes(set: TapedSet, system: LengthSystem): readonly string[] {
  const off =
    system === 'm'
      ? `${formatNumber(set.withinMetres * 100, 1)}${NBSP}cm`
      : formatLength(set.withinMetres, system);
  return [
    `Both to ${set.to}.`,
    ...(set.mirror === 'possible' ? [`The tapes meet twice: it stands ${set.side.words}.`] : []),
    `A centimetre read wrong on each puts it off by up to ${off}.`,
  ];
}
