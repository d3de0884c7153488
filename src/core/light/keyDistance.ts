import { length } from '../form/build/vector';
import { lampsAt } from '../form/lamps';
import { anchorOf, carrierOf } from '../plan/edits/anchorOf';
import { moveItem } from '../plan/edits/moveItem';
import { itemOf } from '../plan/items';
import { named } from '../plan/named';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { STANDING_METRES, surfaceUnder } from '../plan/surfaces';
import { formatLength } from '../units/lengths';
import {
  type DimAdvice,
  dimForKey,
  type GelAdvice,
  gelForKey,
  isRefused,
  itemOnFace,
  type KeyTarget,
  keyedFace,
  type Refused,
  type ScrimAdvice,
  scrimForKey,
  targetOf,
} from './advice';
import { stopsBetween } from './exposure';
import type { Level, SourceLevel } from './levels';
import { withMovedGear } from './movedGear';

/** Where a lamp has to go along its own axis, level over the deck. `edit`: for `moveItem`. */
export interface DistanceAdvice {
  readonly lampId: string;
  /** From the key to the face, when it is there. */
  readonly metres: number;
  /** How far the lamp moves: back when positive, nearer when negative. */
  readonly backMetres: number;
  readonly edit: { readonly id: string; readonly to: Spot };
}

/** How far the search goes either way, in which steps, and how finely a place is found; metres. */
const FARTHEST_METRES = 30;
const STEP_METRES = 0.25;
const FINE_METRES = 0.0005;
/** Nearer to the face than this no lamp is put, metres. Source: common practice, no source */
const NEAREST_METRES = 0.5;
/** A place this near to the target has it: where a shadow's edge runs through, none has. */
const CLOSE_STOPS = 0.02;
/** A place with less of the lamp unshaded than this share of what it was has its level from a shadow's edge: it is none. */
const LEAST_UNSHADED = 0.99;

interface Tried {
  readonly spot: Spot;
  /** Over the target; −∞ in the dark. */
  readonly stops: number;
  readonly metres: number;
  readonly visible: number;
}

/** The way that a lamp looks, level over the deck; null for one that looks straight up or down. */
function levelAxis(plan: Plan, lampId: string, seconds: number): Spot | null {
  const lamp = lampsAt(plan, seconds).find(({ itemId }) => itemId === lampId);
  if (!lamp) return null;
  const [x, , z] = lamp.direction;
  const level = length([x, 0, z]);
  return level < 1e-3 ? null : [x / level, z / level];
}

/** What the key gives with its lamp moved back by so many metres along the level axis. */
function tryAt(plan: Plan, { keyed, target }: KeyTarget, from: Spot, axis: Spot, backMetres: number): Tried {
  const spot: Spot = [from[0] - axis[0] * backMetres, from[1] - axis[1] * backMetres];
  const moved = moveItem(plan, { id: keyed.lampId, to: spot });
  const scene = withMovedGear(keyed.scene, moved);
  const { lux, metres, visible } = itemOnFace(scene, keyed.face, keyed.key.itemId);
  return { spot, stops: lux > 0 ? stopsBetween(target.lux, lux) : -Infinity, metres, visible };
}

/** Whether what stands at a place can stand at another: on the same level, and not over the edge. */
function canStand(plan: Plan, carried: boolean, from: Spot, to: Spot): boolean {
  if (!carried) return true;
  const [here, there] = [surfaceUnder(plan, from), surfaceUnder(plan, to)];
  return there.id !== null && Math.abs(there.metres - here.metres) <= STANDING_METRES;
}

/** A place between two tried ones at which the key has its target; null where a shadow's edge lies between them. */
function between(
  tried: (backMetres: number) => Tried,
  low: number,
  high: number,
  sign: number,
  unshaded: number,
): number | null {
  let [a, b] = [low, high];
  while (Math.abs(b - a) > FINE_METRES) {
    const middle = (a + b) / 2;
    if (tried(middle).stops * sign > 0) a = middle;
    else b = middle;
  }
  const found = tried(b);
  return Math.abs(found.stops) <= CLOSE_STOPS && found.visible >= LEAST_UNSHADED * unshaded ? b : null;
}

/**
 * Where along its axis a lamp has to stand for a key to have its target: the nearest place, found on the levels
 * themselves, shadows and beam included, by moving the lamp with all that goes along (`moveItem`) while it stays aimed
 * at what it is aimed at. A lamp on a stand goes no farther than the deck that it stands on.
 */
export function distanceForKey(plan: Plan, keyTarget: KeyTarget): DistanceAdvice | Refused {
  const { keyed, target } = keyTarget;
  const { lampId, lampLabel, scene, face, key } = keyed;
  const record = itemOf(plan, carrierOf(plan, lampId) ?? lampId)?.record;
  if (record?.locked) return { refused: `${named(lampLabel)} is locked in its place.` };
  const from = anchorOf(plan, lampId);
  const axis = levelAxis(plan, lampId, scene.seconds);
  if (!from || !axis)
    return { refused: `${named(lampLabel)} looks straight up or down; raise or lower it instead.` };
  const now = stopsBetween(target.lux, key.lux);
  const sign = now > 0 ? 1 : -1;
  const tried = (backMetres: number) => tryAt(plan, keyTarget, from, axis, backMetres);
  const carried = carrierOf(plan, lampId) !== null;
  const unshaded = itemOnFace(scene, face, key.itemId).visible;
  const advice = (backMetres: number): DistanceAdvice => {
    const { spot, metres } = tried(backMetres);
    return { lampId, metres, backMetres, edit: { id: lampId, to: spot } };
  };
  if (Math.abs(now) < 1e-3) return advice(0);
  let last = 0;
  for (let metres = STEP_METRES; metres <= FARTHEST_METRES; metres += STEP_METRES) {
    const next = sign * metres;
    const here = tried(next);
    const toFace = length([here.spot[0] - face.at[0], 0, here.spot[1] - face.at[2]]);
    if (sign < 0 && toFace < NEAREST_METRES) break;
    if (!canStand(plan, carried, from, here.spot))
      return {
        refused: `The deck ends before ${named(lampLabel)} is far enough ${sign > 0 ? 'back' : 'forward'}.`,
      };
    if (here.stops * sign <= 0) {
      const found = between(tried, last, next, sign, unshaded);
      if (found !== null) return advice(found);
    }
    last = next;
  }
  return {
    refused: `No place for ${named(lampLabel)} along its axis within ${formatLength(FARTHEST_METRES, 'm', { decimals: 0 })} gives that level.`,
  };
}

/** All ways to put a key so many stops under the exposure. */
export interface KeyAdvice {
  readonly key: SourceLevel;
  readonly target: Level;
  readonly lampId: string;
  readonly dim: DimAdvice | Refused;
  readonly distance: DistanceAdvice | Refused;
  readonly scrim: ScrimAdvice | Refused;
  readonly gel: GelAdvice | Refused;
}

/**
 * How to set the key on a performer's face so many stops under the exposure (negative: over) at an instant of a setup,
 * by its dim, by its distance, by scrims, or by neutral gel.
 */
export function keyAdvice(
  plan: Plan,
  setup: Setup,
  performerId: string,
  seconds: number,
  stopsUnder: number,
): KeyAdvice | Refused {
  const keyed = keyedFace(plan, setup, performerId, seconds);
  if (isRefused(keyed)) return keyed;
  const keyTarget = targetOf(keyed, stopsUnder);
  return {
    key: keyed.key,
    target: keyTarget.target,
    lampId: keyed.lampId,
    dim: dimForKey(plan, keyTarget),
    distance: distanceForKey(plan, keyTarget),
    scrim: scrimForKey(plan, keyTarget),
    gel: gelForKey(plan, keyTarget),
  };
}
