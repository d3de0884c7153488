import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved, movedBy, type Placement } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { type Body, bodyOf } from './body';
import type { Bones } from './pose/placeBones';
import { PROP_BELOW, PROP_HEIGHT_IN_HANDS } from './shape/props';
import { type Placed, placedAt } from './whereabouts';

/** Where the foot of a prop is in the figure's own frame; it keeps upright and faces as the figure does. */
function propPlacement(
  body: Body,
  bones: Bones,
  placed: Placed,
  prop: NonNullable<Performer['prop']>,
): Placement {
  const size = body.skeleton.hand;
  const [x, y, z] =
    placed.pose.carry === 'both hands'
      ? betweenHands(bones, size, PROP_HEIGHT_IN_HANDS[prop])
      : moved(
          bones['right hand'],
          prop === 'case' ? [-0.14 * size, -0.62 * size, 0] : [-0.07 * size, -0.45 * size, 0],
        );
  return movedBy([x, Math.max(y, PROP_BELOW[prop]), z]);
}

function betweenHands(bones: Bones, size: number, below: number): Vec3 {
  const right = moved(bones['right hand'], [0, -0.5 * size, 0]);
  const left = moved(bones['left hand'], [0, -0.5 * size, 0]);
  return [(right[0] + left[0]) / 2, (right[1] + left[1]) / 2 - below, (right[2] + left[2]) / 2];
}

function build(performer: Performer, placed: Placed): readonly PlacedPart[] {
  const body = bodyOf(performer);
  const { bones, worldFromOwn, pose } = placed;
  const carried = performer.prop
    ? compose(worldFromOwn, propPlacement(body, bones, placed, performer.prop))
    : worldFromOwn;
  const worldFromBone = new Map<string, Placement>();
  const worldOf = (bone: keyof Bones): Placement => {
    const known = worldFromBone.get(bone);
    if (known) return known;
    const made = compose(worldFromOwn, bones[bone]);
    worldFromBone.set(bone, made);
    return made;
  };
  const parts: PlacedPart[] = [];
  for (const { name, bone, shape, hold, drape } of body.parts) {
    if (hold && pose.hands[hold.hand] !== hold.as) continue;
    if (drape && drape !== pose.drape) continue;
    parts.push({ name, shape, worldFromPart: bone === 'prop' ? carried : worldOf(bone) });
  }
  return parts;
}

const partsOfPlaced = new WeakMap<Placed, readonly PlacedPart[]>();
const NOTHING: readonly PlacedPart[] = [];

/**
 * The performer's parts at an instant of the action's clock, none without marks. Shapes are shared between instants;
 * while the performer keeps still the very same parts come back.
 */
export function figureParts(performer: Performer, plan: Plan, seconds: number): readonly PlacedPart[] {
  const placed = placedAt(performer, plan, seconds);
  if (!placed) return NOTHING;
  const known = partsOfPlaced.get(placed);
  if (known) return known;
  const parts = build(performer, placed);
  partsOfPlaced.set(placed, parts);
  return parts;
}
