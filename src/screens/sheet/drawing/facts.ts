import { opennessOf } from '../../../core/form/pieces/making/mesh';
import type { Item } from '../../../core/plan/items';
import { formatShare } from '../../../core/units/shares';
import { lossText } from '../fields/lightLoss';

/**
 * What follows from an item's numbers for the light, as sentences: how open a mesh is and what it takes from a lamp
 * behind it, what a frame takes. Null where nothing does.
 */
export function lightSentence({ record }: Item): string | null {
  if ('mesh' in record && record.mesh) {
    const openness = opennessOf(record.mesh);
    return `${formatShare(openness)} open. Seen square on, it ${lossText(openness)} from a lamp behind it.`;
  }
  if ('transmission' in record)
    return `${formatShare(record.transmission)} goes through. It ${lossText(record.transmission)} from a lamp behind it.`;
  return null;
}
