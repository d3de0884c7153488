import type { LampForm } from '../../core/form/types';
import { colourOfLamp, type LinearColour } from './kelvin';

/** A few lamps close together, as one light in the middle of them. */
export interface PointSource {
  readonly position: readonly [number, number, number];
  readonly candela: number;
  /** Of unit luminance. */
  readonly colour: LinearColour;
}

/**
 * Lamps that shine all round as at most `most` lights: neighbours of the same item are taken together, evenly, the
 * items with the most lamps first; candela add up, places are averaged by candela.
 */
export function gathered(lamps: readonly LampForm[], most: number): readonly PointSource[] {
  const byItem = new Map<string, LampForm[]>();
  for (const lamp of lamps) {
    const siblings = byItem.get(lamp.itemId);
    if (siblings) siblings.push(lamp);
    else byItem.set(lamp.itemId, [lamp]);
  }
  const items = [...byItem.values()].slice(0, most);
  const shares = items.map(() => 1);
  for (let spare = most - items.length; spare > 0; spare -= 1) {
    // The next light goes where the most lamps still share one.
    let neediest = -1;
    items.forEach((siblings, k) => {
      const crowd = siblings.length / shares[k];
      if (crowd > 1 && (neediest < 0 || crowd > items[neediest].length / shares[neediest])) neediest = k;
    });
    if (neediest < 0) break;
    shares[neediest] += 1;
  }
  return items.flatMap((siblings, k) => split(siblings, shares[k]).map(together));
}

function split(lamps: readonly LampForm[], groups: number): LampForm[][] {
  return Array.from({ length: groups }, (_, k) =>
    lamps.slice(Math.floor((k * lamps.length) / groups), Math.floor(((k + 1) * lamps.length) / groups)),
  ).filter((group) => group.length > 0);
}

function together(lamps: readonly LampForm[]): PointSource {
  const candela = lamps.reduce((sum, lamp) => sum + lamp.peakCandela, 0);
  const middle = [0, 1, 2].map(
    (axis) => lamps.reduce((sum, lamp) => sum + lamp.position[axis] * lamp.peakCandela, 0) / candela,
  );
  return { position: [middle[0], middle[1], middle[2]], candela, colour: colourOfLamp(lamps[0]) };
}
