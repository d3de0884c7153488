import { moved } from '../form/build/placement';
import { dot, subtract, type Vec3 } from '../form/build/vector';
import { clothPlace } from '../form/gear/cloth';
import { lampsAt } from '../form/lamps';
import { bearingOffFace, type Face } from '../light/face';
import type { Camera } from '../optics/types';
import { rotation } from '../plan/edits/motion';
import type { Gear } from '../plan/schema/gear';
import type { Point, Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { KeyReading } from './keySideReading';
import { signedDegrees } from './keySideReading';
import type { Side } from './types';

/** What of the gear goes round with a key: a stand with all that it carries, or what has a place of its own. */
export interface KeyMove {
  readonly itemId: string;
  readonly from: Spot;
  readonly to: Spot;
  /** Where the lamp is aimed afterwards; null where it is a cloth that moves. */
  readonly aim: Point | null;
}

/** The turn about a performer that brings a key back to where the establishing setup has it off the face. */
export interface KeyTurn {
  readonly keyId: string;
  /** Clockwise seen from above, −180 to 180. */
  readonly turnDegrees: number;
  /** The way that the key goes as the camera sees it. */
  readonly cameraSide: Side;
  /** The upright axis goes through this place, midway between the performer's eyes. */
  readonly about: Spot;
  readonly moves: readonly KeyMove[];
}

/** Less than this is no turn, degrees. */
const LEAST_DEGREES = 0.05;

type Movable = Extract<Gear, { kind: 'head' | 'bounce' | 'frame' }>;

const movableOf = (plan: Plan, id: string | null): Movable | null =>
  plan.gear.find(
    (gear): gear is Movable =>
      gear.id === id && (gear.kind === 'head' || gear.kind === 'bounce' || gear.kind === 'frame'),
  ) ?? null;

/** Where a movable source's light starts, world metres. */
function sourceOf(plan: Plan, gear: Movable, seconds: number): Vec3 {
  if (gear.kind !== 'head') return moved(clothPlace(gear, plan).placement, [0, 0, 0]);
  const lamp = lampsAt(plan, seconds).find(({ itemId }) => itemId === gear.id);
  if (!lamp) throw new Error(`keySideTurn: head “${gear.id}” has no lamp`);
  return lamp.position;
}

function moveOf(plan: Plan, gear: Movable, about: Spot, turnDegrees: number): KeyMove {
  const { spot } = rotation(about, turnDegrees);
  const { place } = gear;
  const stand = 'on' in place ? plan.gear.find(({ id }) => id === place.on) : null;
  const at = stand?.kind === 'stand' ? stand.at : 'at' in place ? place.at : [0, 0, 0];
  const from: Spot = [at[0], at[2]];
  const aimed = gear.kind === 'head' ? spot([gear.aim[0], gear.aim[2]]) : null;
  return {
    itemId: stand?.id ?? gear.id,
    from,
    to: spot(from),
    aim: gear.kind === 'head' && aimed ? [aimed[0], gear.aim[1], aimed[1]] : null,
  };
}

/**
 * What has to turn with a scene, so that a key comes from where it came before: the bearing of the established key off
 * the established face, less its bearing off this face, as a turn about the upright axis between this face's eyes. It
 * takes the lamp itself round, not where its light seems to come from, so it is exact. A cloth takes the lamp that
 * feeds it along. Null where nothing has to turn, or where the key is none of the crew's.
 */
export function keyTurn(
  plan: Plan,
  established: { readonly reading: KeyReading; readonly face: Face },
  here: { readonly face: Face; readonly camera: Camera },
): KeyTurn | null {
  const { seconds, keyId, fedBy } = established.reading;
  const key = movableOf(plan, keyId);
  if (!key) return null;
  const source = sourceOf(plan, key, seconds);
  const before = bearingOffFace(established.face, subtract(source, established.face.at));
  const after = bearingOffFace(here.face, subtract(source, here.face.at));
  const turnDegrees = signedDegrees(before - after);
  if (Math.abs(turnDegrees) < LEAST_DEGREES) return null;
  const about: Spot = [here.face.at[0], here.face.at[2]];
  const [x, z] = rotation(about, turnDegrees).spot([source[0], source[2]]);
  const feeding = movableOf(plan, fedBy);
  const moves = [key, ...(feeding ? [feeding] : [])].map((gear) => moveOf(plan, gear, about, turnDegrees));
  const aside = dot(subtract([x, source[1], z], source), here.camera.pose.right);
  return {
    keyId: key.id,
    turnDegrees,
    cameraSide: aside < 0 ? 'left' : 'right',
    about,
    moves: moves.filter(({ itemId }, k) => moves.findIndex((move) => move.itemId === itemId) === k),
  };
}
