import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved } from '../build/placement';
import { mix, type Vec3 } from '../build/vector';
import { skeletonFor } from './body';
import { placedAt } from './placed';

/** The heights of a body that framing speaks of, from the crown down. */
export const LANDMARKS = [
  'crown',
  'eyes',
  'chin',
  'tie knot',
  'breast',
  'waist',
  'middle of the thigh',
  'knee',
  'ankle',
  'floor',
] as const;
export type Landmark = (typeof LANDMARKS)[number];

/** Chin below the eyes as a share of stature. Source: common practice, no source */
const CHIN_BELOW_EYES = 0.065;
/**
 * Height of the chest at the nipples as a share of stature, men of the survey: 1289 of 1756.2 mm.
 * Source: [ansur-ii]
 */
const BREAST_SHARE = 1289 / 1756.2;

/** Where the landmarks of a performer are at an instant, in the middle of the body; metres. Null for nobody there. */
export function landmarksAt(
  performer: Performer,
  plan: Plan,
  seconds: number,
): Readonly<Record<Landmark, Vec3>> | null {
  const placed = placedAt(performer, plan, seconds);
  if (!placed) return null;
  const { bones } = placed;
  const { worldFromOwn, motion, skeleton } = placed.figure;
  const { statureMetres, suprasternaleMetres, waistMetres } = skeleton.measures;
  const world = (bone: keyof typeof bones, own: Vec3): Vec3 => moved(compose(worldFromOwn, bones[bone]), own);
  // The trunk's own heights count from the joint that it bends about.
  const trunk = (height: number): Vec3 => world('chest', [0, height - skeleton.waist[1], 0]);
  const pair = (bone: 'thigh' | 'shin' | 'foot', own: Vec3): Vec3 =>
    mix(world(`right ${bone}`, own), world(`left ${bone}`, own), 0.5);
  const [, eyesUp, eyesAhead] = skeleton.eyes;
  return {
    crown: world('head', [0, skeleton.crown, 0]),
    eyes: world('head', skeleton.eyes),
    chin: world('head', [0, eyesUp - CHIN_BELOW_EYES * statureMetres, eyesAhead]),
    'tie knot': trunk(suprasternaleMetres),
    breast: trunk(BREAST_SHARE * statureMetres),
    waist: trunk(waistMetres),
    'middle of the thigh': pair('thigh', [0, -skeleton.thigh / 2, 0]),
    knee: pair('shin', [0, 0, 0]),
    ankle: pair('foot', [0, 0, 0]),
    floor: motion.at,
  };
}

/** Half the breadth of a performer's head, metres: what has to be inside a frame beside the middle of the face. */
export const halfHeadMetres = (performer: Performer): number =>
  skeletonFor(performer).measures.headBreadthMetres / 2;
