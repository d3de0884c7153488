import { candelaTable, fullAngleDegrees } from '../../core/form/photometry/candelaTable';
import type { Distribution } from '../../core/plan/schema/distribution';
import { formatDegrees } from '../../core/units/angles';
import { formatNumber, NBSP } from '../../core/units/numbers';

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
