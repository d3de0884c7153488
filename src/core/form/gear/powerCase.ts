import { standingAt } from '../build/placement';
import type { PlacedPart } from '../types';
import { addSocket, handleOver } from './caseParts';
import { ownPart, placeParts } from './part';
import type { GearOf } from './references';

/** Sockets in a row on the front of a case. */
const SOCKETS = { outlet: 2, battery: 3, appliance: 1 } as const;

/**
 * A case that stands on `at` with its sockets towards the heading: those of the house on a small post box, a battery with
 * a handle over its top, or anything that is plugged in.
 */
export function powerCaseParts(gear: GearOf<'outlet' | 'battery' | 'appliance'>): PlacedPart[] {
  const [width, height, depth] = gear.size;
  const isBattery = gear.kind === 'battery';
  const top = isBattery ? height * 0.86 : height;
  const body = ownPart('body', { substance: 'rubber', smooth: false }, (builder) => {
    builder.box([0, top / 2, 0], [width, top, depth * 0.9]);
  });
  const count = SOCKETS[gear.kind];
  const radius = Math.min(width / (count * 2.8), top * 0.16);
  const sockets = ownPart('sockets', { substance: 'dark metal' }, (builder) => {
    for (let k = 0; k < count; k += 1)
      addSocket(builder, [((k + 0.5) / count - 0.5) * width * 0.86, top * 0.6], depth, radius);
  });
  if (!isBattery) return placeParts([body, sockets], standingAt(gear.at, gear.headingDegrees));
  const tube = Math.min(0.012, height * 0.05);
  const handle = handleOver(width * 0.36, top * 0.98, height - tube, tube);
  return placeParts([body, sockets, handle], standingAt(gear.at, gear.headingDegrees));
}
