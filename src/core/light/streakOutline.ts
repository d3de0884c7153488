import { length, mix, subtract, type Vec3 } from '../form/build/vector';
import { lampsAt } from '../form/lamps';
import type { LampForm } from '../form/types';
import { cameraAt } from '../optics/camera';
import { isLamp } from '../plan/cues';
import type { Wetness } from '../plan/schema/ground';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { wetnessAt } from '../plan/wetness';
import { cos, sin } from '../units/steadyMath';
import { glowFaceIn, reachOf } from './glowFace';
import { streakOf } from './streak';
import { DECK_SKINS, deckAt, deckPlanes, mirrorPoint, streakSkin } from './wetness';

/** The outline of one streak on a deck, where it is half as bright as at its middle; world metres. */
export interface StreakOutline {
  /** Where a mirror would show the lamp. */
  readonly at: Vec3;
  readonly outline: readonly Vec3[];
}

/** Which highlight is meant, as `Highlight` names it. */
export interface StreakOf {
  readonly lampId: string;
  readonly deckId: string;
  readonly wetness: Wetness;
}

/** Corners of an outline. */
const CORNERS = 24;

function reachOfLamp(plan: Plan, lamp: LampForm): number {
  const gear = plan.gear.find(({ id }) => id === lamp.itemId);
  if (!gear || !isLamp(gear))
    throw new Error(`streakOutlines: “${lamp.itemId}” shines and is no lamp of the plan`);
  return reachOf(glowFaceIn(plan, lamp, gear));
}

function outlineOf(
  eye: Vec3,
  lamp: LampForm,
  topMetres: number,
  slope: number,
  reach: number,
): StreakOutline | null {
  const at = mirrorPoint(lamp.position, eye, topMetres);
  if (!at) return null;
  const foot: Vec3 = [eye[0], topMetres, eye[2]];
  const lampFoot: Vec3 = [lamp.position[0], topMetres, lamp.position[2]];
  const way = subtract(lampFoot, foot);
  const apartMetres = length(way);
  if (apartMetres < 1e-6) return null;
  const over = { eyeMetres: eye[1] - topMetres, lampMetres: lamp.position[1] - topMetres, apartMetres };
  const { nearMetres, mirrorMetres, farMetres, widthMetres } = streakOf(over, slope, reach);
  const [alongX, alongZ] = [way[0] / apartMetres, way[2] / apartMetres];
  const outline = Array.from({ length: CORNERS }, (_, k): Vec3 => {
    const turn = (2 * Math.PI * k) / CORNERS;
    const end = cos(turn) < 0 ? mirrorMetres - nearMetres : farMetres - mirrorMetres;
    const middle = mix(foot, lampFoot, (mirrorMetres + end * cos(turn)) / apartMetres);
    const aside = (widthMetres / 2) * sin(turn);
    return [middle[0] - alongZ * aside, topMetres, middle[2] + alongX * aside];
  });
  return { at, outline };
}

/**
 * How the highlight of a lamp, or those of all bulbs of a string, lies on a deck for a setup's lens at an instant,
 * seconds: as `highlightsIn` has it, were nothing in the way. Two half ellipses, from the mirror's place to the streak's
 * near and to its far end. Only those that reach over where the deck is so wet; empty where lamp or lens are not above it.
 */
export function streakOutlines(
  plan: Plan,
  setup: Setup,
  seconds: number,
  { lampId, deckId, wetness }: StreakOf,
): readonly StreakOutline[] {
  const deck = deckPlanes(plan).find(({ pieceId }) => pieceId === deckId);
  if (!deck) return [];
  const eye = cameraAt(plan, setup, seconds).pose.position;
  const { slope } = streakSkin(DECK_SKINS[wetness]);
  const isThere = ([x, , z]: Vec3): boolean =>
    deckAt(plan, [x, z])?.pieceId === deckId && wetnessAt(plan, [x, z]) === wetness;
  return lampsAt(plan, seconds)
    .filter(({ itemId, peakCandela }) => itemId === lampId && peakCandela > 0)
    .flatMap((lamp) => outlineOf(eye, lamp, deck.topMetres, slope, reachOfLamp(plan, lamp)) ?? [])
    .filter(({ at, outline }) => isThere(at) || outline.some(isThere));
}
