import type { Plan } from '../core/plan/schema/plan';
import { serialisePlan } from '../core/plan/serialise';
import { crc32 } from './crc32';

/** Eight digits that tell one state of a plan from another, in two halves: `3F2A 91BC`. It says nothing of who made it. */
export function fingerprintOf(plan: Plan): string {
  const digits = crc32(new TextEncoder().encode(serialisePlan(plan)))
    .toString(16)
    .toUpperCase()
    .padStart(8, '0');
  return `${digits.slice(0, 4)}\u00a0${digits.slice(4)}`;
}
