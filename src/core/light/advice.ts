import type { Vec3 } from '../form/build/vector';
import { DOUBLE_STOPS, SINGLE_STOPS } from '../form/photometry/throughBefore';
import { glassOf } from '../optics/camera';
import { dimAt, isLamp, type Lamp, playedCues } from '../plan/cues';
import { named } from '../plan/named';
import { played } from '../plan/played';
import { BEFORE_LIMITS } from '../plan/schema/before';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { formatNumber } from '../units/numbers';
import { formatShare } from '../units/shares';
import { log, pow } from '../units/steadyMath';
import { formatStopCount, formatStopSetting } from '../units/stops';
import { clothLight } from './clothLight';
import { askedLux, stopsBetween } from './exposure';
import { type Face, faceAt, faceLight, planeNormals } from './face';
import { lampLight } from './lampLight';
import { type Level, levelOf, type SourceLevel } from './levels';
import { type LightScene, lightScene } from './lightScene';
import { withMovedGear } from './movedGear';
import { sourceLux } from './sourceLight';

/** Why something cannot be done, in a sentence. */
export interface Refused {
  readonly refused: string;
}

export const isRefused = (answer: object): answer is Refused => 'refused' in answer;

/** A face in a light, and what is its key. */
export interface KeyedFace {
  readonly setup: Setup;
  readonly face: Face;
  readonly scene: LightScene;
  readonly key: SourceLevel;
  /** The lamp to change: the key itself, or the lamp that feeds a cloth. */
  readonly lampId: string;
  readonly lampLabel: string;
}

/** The key on a performer's face through a setup at an instant; refused without a face or a key. */
export function keyedFace(
  plan: Plan,
  setup: Setup,
  performerId: string,
  seconds: number,
): KeyedFace | Refused {
  const acted = played(plan, setup);
  const performer = acted.cast.find(({ id }) => id === performerId);
  const face = performer && faceAt(performer, acted, seconds);
  if (!performer || !face) return { refused: 'There is nobody on a mark to light.' };
  const scene = lightScene(plan, setup, seconds);
  const { key, keyLux } = faceLight(scene, face);
  const lampId = key && (key.fedBy ?? key.itemId);
  const lamp = plan.gear.find(({ id }) => id === lampId);
  if (!key || !lamp)
    return { refused: `No lamp reaches the face of ${named(performer.label)} from before it.` };
  return {
    setup,
    face,
    scene,
    key: { itemId: key.itemId, fedBy: key.fedBy, ...levelOf(keyLux, askedLux(setup)) },
    lampId: lamp.id,
    lampLabel: lamp.label,
  };
}

/**
 * Lux of one lamp or cloth on the best of the planes of a face, as its key is measured; how far off it is, and the share
 * of it that is not shaded.
 */
export function itemOnFace(
  scene: LightScene,
  face: Face,
  itemId: string,
): { readonly lux: number; readonly metres: number; readonly visible: number } {
  const question = { ignore: new Set([face.performerId]) };
  const sources = [
    ...scene.lamps
      .filter(({ form }) => form.itemId === itemId)
      .flatMap((lamp) => lampLight(scene, lamp, face.at, question) ?? []),
    ...scene.cloths
      .filter(({ id }) => id === itemId)
      .flatMap((cloth) => clothLight(scene, cloth, face.at, question) ?? []),
  ];
  const normals = planeNormals(face);
  const on = (normal: Vec3): number => sources.reduce((sum, source) => sum + sourceLux(source, normal), 0);
  return {
    lux: Math.max(on(normals.front), on(normals.left), on(normals.right)),
    metres: Math.min(...sources.map(({ metres }) => metres)),
    visible: Math.max(0, ...sources.map(({ visible }) => visible)),
  };
}

/** The stop at which a key is so far under the exposure, and what sets it. */
export interface StopAdvice {
  readonly key: SourceLevel;
  /** The T number, exactly, and the nearest third of a stop. */
  readonly stop: number;
  readonly thirdStop: number;
  readonly edit: { readonly setupId: string; readonly stop: number };
}

/** The full third of a stop that is nearest: T = 2^(k ÷ 6), rounded to a tenth as lenses are engraved. */
export function nearestThird(stop: number): number {
  const exact = pow(2, Math.round((log(stop) / Math.LN2) * 6) / 6);
  return Math.round(exact * 10) / 10;
}

/**
 * The stop that puts a performer's key so many stops under the exposure (negative: over): T′ = T · 2^(d ÷ 2), d how far
 * the key is from there now. Refused where the lens does not open or close so far. `edit`: for `setStop`.
 *
 * Source: [exposure-values]
 */
export function stopForKey(
  plan: Plan,
  setup: Setup,
  performerId: string,
  seconds: number,
  stopsUnder = 0,
): StopAdvice | Refused {
  const keyed = keyedFace(plan, setup, performerId, seconds);
  if (isRefused(keyed)) return keyed;
  const away = stopsBetween(askedLux(setup), keyed.key.lux) + stopsUnder;
  const stop = setup.stop * pow(2, away / 2);
  const { widestStop, narrowestStop } = glassOf(plan, setup).lens;
  if (stop < widestStop * 0.995)
    return {
      refused: `That asks for ${formatStopSetting(stop)}; the lens opens to ${formatStopSetting(widestStop)}.`,
    };
  if (stop > narrowestStop * 1.005)
    return {
      refused: `That asks for ${formatStopSetting(stop)}; the lens closes to ${formatStopSetting(narrowestStop)}.`,
    };
  return { key: keyed.key, stop, thirdStop: nearestThird(stop), edit: { setupId: setup.id, stop } };
}

/** A new dim. `edit`: for `reshapeItem`. */
export interface DimAdvice {
  readonly lampId: string;
  readonly dim: number;
  readonly edit: { readonly id: string; readonly patch: { readonly dim: number } };
}

/** Scrims to put into the lamp. `edit`: for `setBefore`. */
export interface ScrimAdvice {
  readonly lampId: string;
  /** What has to go, what the scrims that are put in take, and what is left over then; stops. */
  readonly stops: number;
  readonly takenStops: number;
  readonly leftStops: number;
  /** Double and single scrims that are in it then, with those that it has. */
  readonly doubles: number;
  readonly singles: number;
  readonly edit: {
    readonly id: string;
    readonly before: { readonly doubles: number; readonly singles: number };
  };
}

/** Neutral gel to put before the lamp. `edit`: for `setBefore`. */
export interface GelAdvice {
  readonly lampId: string;
  /** Density that takes what has to go, and the same with what is before the lamp. */
  readonly density: number;
  readonly edit: { readonly id: string; readonly before: { readonly density: number } };
}

/** Where no more than this over full is wanted, as a share, full is taken: about a thousandth of a stop. */
const OVER_FULL = 1e-3;

/** Neutral density of a stop: log₁₀ 2. Source: [neutral-density] */
const DENSITY_PER_STOP = Math.LN2 / Math.LN10;

/** What a key has now and is to have. */
export interface KeyTarget {
  readonly keyed: KeyedFace;
  readonly target: Level;
}

/** The level of a key that is so many stops under the exposure. */
export const targetOf = (keyed: KeyedFace, stopsUnder: number): KeyTarget => {
  const asked = askedLux(keyed.setup);
  return { keyed, target: levelOf(asked * pow(2, -stopsUnder), asked) };
};

/** The lamp of a key, and the share of what it gives now at which the key has its target; of a cloth, what other lamps send it stays. */
function shareForKey(
  plan: Plan,
  { keyed, target }: KeyTarget,
): { readonly lamp: Lamp; readonly share: number } | Refused {
  const { face, scene, key, lampId, lampLabel } = keyed;
  const lamp = plan.gear.find(({ id }) => id === lampId);
  if (!lamp || !isLamp(lamp)) return { refused: `${named(lampLabel)} has no dimmer.` };
  const without =
    key.fedBy === null
      ? 0
      : itemOnFace(
          withMovedGear(scene, {
            ...plan,
            gear: plan.gear.map((gear) => (gear === lamp ? { ...lamp, dim: 0, cues: [] } : gear)),
          }),
          face,
          key.itemId,
        ).lux;
  if (target.lux <= without)
    return {
      refused: `Other lamps alone give it more than that; ${named(lampLabel)} dimmed to nothing is not enough.`,
    };
  return { lamp, share: (target.lux - without) / (key.lux - without) };
}

/**
 * The dim at which a key has its target: what the key gives goes with the dim of its lamp, as far as it comes from that
 * lamp.
 */
export function dimForKey(plan: Plan, keyTarget: KeyTarget): DimAdvice | Refused {
  const { scene, lampId, lampLabel } = keyTarget.keyed;
  const found = shareForKey(plan, keyTarget);
  if (isRefused(found)) return found;
  const { lamp, share } = found;
  const wanted = dimAt(lamp, plan, scene.seconds) * share;
  if (wanted > 1 + OVER_FULL) {
    const short = stopsBetween(1, wanted);
    return {
      refused: `${named(lampLabel)} at full is still ${formatStopCount(short, short < 0.05 ? 3 : 1)} short.`,
    };
  }
  const dim = Math.min(1, wanted);
  if (playedCues(plan, lamp).some(({ fromSeconds }) => fromSeconds <= scene.seconds))
    return {
      refused: `${named(lampLabel)} is on a cue then: dim the cue to ${formatShare(dim)}, not the lamp.`,
    };
  return { lampId, dim, edit: { id: lampId, patch: { dim } } };
}

/** The lamp of a key, and the stops that have to be taken from it; refused where it is no stronger than is wanted. */
function stopsToTake(
  plan: Plan,
  keyTarget: KeyTarget,
): { readonly lamp: Lamp; readonly stops: number } | Refused {
  const { keyed, target } = keyTarget;
  if (target.lux >= keyed.key.lux)
    return { refused: `${named(keyed.lampLabel)} is no stronger than that; scrims and gel only take away.` };
  const found = shareForKey(plan, keyTarget);
  return isRefused(found) ? found : { lamp: found.lamp, stops: stopsBetween(found.share, 1) };
}

/** Scrims, a double for a stop and a single for half of one, that bring a key nearest to its target. */
export function scrimForKey(plan: Plan, keyTarget: KeyTarget): ScrimAdvice | Refused {
  const found = stopsToTake(plan, keyTarget);
  if (isRefused(found)) return found;
  const { lamp, stops } = found;
  if (lamp.kind !== 'head') return { refused: `No scrims go into ${named(lamp.label)}.` };
  const { doubles: hadDoubles = 0, singles: hadSingles = 0 } = lamp.before ?? {};
  const [, most] = BEFORE_LIMITS.scrims;
  const had = hadDoubles * DOUBLE_STOPS + hadSingles * SINGLE_STOPS;
  const halves = Math.round((had + stops) / SINGLE_STOPS);
  const doubles = Math.min(most, Math.floor((halves * SINGLE_STOPS) / DOUBLE_STOPS));
  const singles = Math.min(most, halves - (doubles * DOUBLE_STOPS) / SINGLE_STOPS);
  const takenStops = doubles * DOUBLE_STOPS + singles * SINGLE_STOPS - had;
  return {
    lampId: lamp.id,
    stops,
    takenStops,
    leftStops: stops - takenStops,
    doubles,
    singles,
    edit: { id: lamp.id, before: { doubles, singles } },
  };
}

/**
 * Neutral gel that brings a key to its target: density = stops · log₁₀ 2.
 *
 * Source: [neutral-density]
 */
export function gelForKey(plan: Plan, keyTarget: KeyTarget): GelAdvice | Refused {
  const found = stopsToTake(plan, keyTarget);
  if (isRefused(found)) return found;
  const { lamp, stops } = found;
  const density = stops * DENSITY_PER_STOP;
  const all = density + (lamp.before?.density ?? 0);
  const [, most] = BEFORE_LIMITS.density;
  if (all > most)
    return { refused: `That asks for a density of ${formatNumber(all, 2)}; a plan takes up to ${most}.` };
  return { lampId: lamp.id, density, edit: { id: lamp.id, before: { density: all } } };
}
