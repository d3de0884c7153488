import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { ProbeRecord } from '../../../core/plan/schema/sky';
import { formatLight, type LightUnit } from '../../../core/units/illuminance';
import { formatStops } from '../../../core/units/stops';
import type { MeterReading } from '../../../desk/sky/meterReadings';

/** What a meter faces, in words. */
export const FACINGS = {
  key: 'the strongest light',
  up: 'straight up',
  way: 'a heading of its own',
} as const;
export type Facing = keyof typeof FACINGS;

export const facingOf = ({ normal }: ProbeRecord): Facing => (typeof normal === 'string' ? normal : 'way');

/** `420 lx`, and with a setup `420 lx, +0.3 stops`. */
export function readingText({ lux, stops }: MeterReading, unit: LightUnit): string {
  const level = formatLight(lux, unit);
  return stops === null ? level : `${level}, ${formatStops(stops)}`;
}

/** Where most of it comes from. */
export function mostlyText(plan: Plan, { itemId }: MeterReading): string {
  if (itemId === null) return 'sky, streets and moon alone';
  return itemOf(plan, itemId)?.record.label ?? itemId;
}
