import { opennessOf } from '../../../core/form/pieces/making/mesh';
import type { Item } from '../../../core/plan/items';
import { formatShare } from '../../../core/units/shares';
import { lossText } from '../fields/lightLoss';

/**
 * What follows from an item's numbers for the light, as sentences: how open a mesh is and what it takes from a lamp
 * behind it, what a frame or a net takes. Null where nothing does.
 */
export function lightSentence({ record }: Item): string | null {
  if ('mesh' in record && record.mesh) {
    const openness = opennessOf(record.mesh);
    return `${formatShare(openness)} open. Seen square on, a lamp behind it ${lossText(openness)}.`;
  }
  if ('transmission' in record && record.transmission !== undefined)
    return `A lamp behind it ${lossText(record.transmission)}.`;
  return null;
}
