import { awgAreaMm2 } from '../../../core/kit/powerCords';
import type { Wire } from '../../../core/plan/schema/power';
import { wireWords } from '../../../core/report/power/powerWords';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';

/** A conductor in the units that lengths are read in: `2.5 mm²`, `12 AWG`; a gauge in metres with what it comes to. */
export function wireText(wire: Wire, lengths: LengthSystem): string {
  if ('mm2' in wire) return wireWords(wire);
  const gauge = `${wire.awg}${NBSP}AWG`;
  return lengths === 'm' ? `${formatNumber(awgAreaMm2(wire.awg), 1)}${NBSP}mm² (${gauge})` : gauge;
}
