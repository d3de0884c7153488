import { zipSync } from 'fflate';
import type { Plan } from '../../core/plan/schema/plan';
import { NO_DAY } from '../noDay';
import { planToUsda } from './usda';

const LAYER = 'roof.usda';
/** A file's data has to begin at a multiple of this; from memory: the USDZ specification. */
const ALIGNED = 64;
/** What a zip has before a file's data, beside its name: its header, and the head of the field that pads it. */
const HEADER_BYTES = 30;
const FIELD_HEADER_BYTES = 4;
/** The field's number: any that nobody else reads. */
const PADDING_FIELD = 0x1986;

/** The plan's USD stage as one package: a zip that holds it as it is, at the place where readers look for it. */
export function planToUsdz(plan: Plan, seconds: number): Uint8Array<ArrayBuffer> {
  const before = HEADER_BYTES + LAYER.length + FIELD_HEADER_BYTES;
  const padding = (ALIGNED - (before % ALIGNED)) % ALIGNED;
  return new Uint8Array(
    zipSync({
      [LAYER]: [
        planToUsda(plan, seconds),
        { level: 0, mtime: NO_DAY, extra: { [PADDING_FIELD]: new Uint8Array(padding) } },
      ],
    }),
  );
}
