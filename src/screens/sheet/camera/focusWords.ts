import type { FocusOnPerformer } from '../../../core/continuity/focusTrack';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';

/** A distance, or what stands for one that is endless or none at all. */
export function distanceWords(metres: number | null, lengths: LengthSystem): string {
  if (metres === null) return 'nobody there';
  return Number.isFinite(metres) ? formatLength(metres, lengths) : 'infinity';
}

/** `6.71 m, sharp`, or how large the blur of a point at the eyes is: on the gate, and of the picture's height. */
export function blurWords(
  { metres, blurMm, sharp }: FocusOnPerformer,
  gateHeightMm: number,
  lengths: LengthSystem,
): string {
  if (metres === null || blurMm === null) return 'not before the lens';
  const at = formatLength(metres, lengths);
  const blur = `blur ${blurMm.toFixed(3)}${NBSP}mm, ${formatShare(blurMm / gateHeightMm)} of the gate’s height`;
  return sharp ? `${at}, sharp, ${blur}` : `${at}, soft, ${blur}`;
}
