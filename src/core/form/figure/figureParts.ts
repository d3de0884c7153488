import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved, type Placement, standingAt } from '../build/placement';
import { mix, type Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { bodyOf } from './body';
import { propBetween } from './meeting';
import { type Placed, placedAt } from './placed';
import type { Bones } from './pose/placeBones';
import { PROP_BELOW, PROP_HEIGHT_IN_HANDS, type Prop, propShapes } from './shape/props';

/** Where the foot of a prop is in the figure's own frame; it keeps upright and faces as the figure does. */
function propPlacement({ figure, bones, pose, reach }: Placed, prop: Prop): Placement {
  const size = figure.skeleton.hand;
  const held =
    pose.carry === 'both hands'
      ? betweenHands(bones, size, PROP_HEIGHT_IN_HANDS[prop])
      : moved(
          bones['right hand'],
          prop === 'case' ? [-0.14 * size, -0.62 * size, 0] : [-0.07 * size, -0.45 * size, 0],
        );
  // While two have their hands on it, it is where these meet.
  const [x, y, z] = reach ? mix(held, propBetween(reach), reach.share) : held;
  return standingAt([x, Math.max(y, PROP_BELOW[prop]), z], reach?.propTurnDegrees ?? 0);
}

function betweenHands(bones: Bones, size: number, below: number): Vec3 {
  const right = moved(bones['right hand'], [0, -0.5 * size, 0]);
  const left = moved(bones['left hand'], [0, -0.5 * size, 0]);
  return [(right[0] + left[0]) / 2, (right[1] + left[1]) / 2 - below, (right[2] + left[2]) / 2];
}

function build(performer: Performer, placed: Placed): readonly PlacedPart[] {
  const { bones, pose } = placed;
  const { worldFromOwn, carry } = placed.figure;
  const worldFromBone = new Map<string, Placement>();
  const worldOf = (bone: keyof Bones): Placement => {
    const known = worldFromBone.get(bone);
    if (known) return known;
    const made = compose(worldFromOwn, bones[bone]);
    worldFromBone.set(bone, made);
    return made;
  };
  const parts: PlacedPart[] = [];
  for (const { name, bone, shape, hold, drape } of bodyOf(performer).parts) {
    if (hold && pose.hands[hold.hand] !== hold.as) continue;
    if (drape && drape !== pose.drape) continue;
    parts.push({ name, shape, worldFromPart: worldOf(bone) });
  }
  if (carry.prop) {
    const worldFromPart = compose(worldFromOwn, propPlacement(placed, carry.prop));
    for (const shape of propShapes(carry.prop)) parts.push({ name: 'prop', shape, worldFromPart });
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
