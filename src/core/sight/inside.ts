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

/** The item that a point lies inside of: an odd number of its walls on the way out; null where it lies in the open. */
export function solidAround(forms: readonly ItemForm[], point: Vec3): ItemForm | null {
  const ray: Ray = { origin: point, direction: ODD_WAY };
  const around = stageOf(forms).parts.find((part) => {
    const { openness, mirror, substance } = part.shape;
    if (openness !== null || mirror || SOFT.includes(substance)) return false;
    return !isHollow(forms[part.item], part) && meetings(part, ray) % 2 === 1;
  });
  return around ? forms[around.item] : null;
}
