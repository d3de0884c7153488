import type { Vec3 } from '../form/build/vector';
import type { ItemForm, PartShape } from '../form/types';
import { solidOf } from './closed';
import { meetings, type Ray } from './rays';
import { type StagePart, stageOf } from './stage';

/** Things that nobody minds a camera being in. */
const SOFT: readonly PartShape['substance'][] = ['glow', 'window'];
/** A direction that no builder works along, so that the ray does not run in the plane of a wall. */
const ODD_WAY: Vec3 = [0.2113, 0.9487, 0.2351];

/** Whether a part is a surface of a model that shuts nothing in, or the box that stands for a model: nobody is inside. */
const isHollow = (form: ItemForm, { name, shape }: StagePart): boolean =>
  form.kind === 'model' && (name === 'box' || !solidOf(shape).isClosed);

/**
 * What tells the item that a point lies inside of: an odd number of its walls on the way out; null where it lies in the
 * open. For many points among the same things.
 */
export function solidFinder(forms: readonly ItemForm[]): (point: Vec3) => ItemForm | null {
  const walls = stageOf(forms).parts.filter((part) => {
    const { openness, mirror, substance } = part.shape;
    return openness === null && !mirror && !SOFT.includes(substance);
  });
  return (point) => {
    const ray: Ray = { origin: point, direction: ODD_WAY };
    const around = walls.find((part) => meetings(part, ray) % 2 === 1 && !isHollow(forms[part.item], part));
    return around ? forms[around.item] : null;
  };
}

/** The item that a point lies inside of; null where it lies in the open. */
export const solidAround = (forms: readonly ItemForm[], point: Vec3): ItemForm | null =>
  solidFinder(forms)(point);
