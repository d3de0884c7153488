import { isRefused, type KeyedFace, keyedFace, type Refused, stopForKey } from '../../core/light/advice';
import type { HighlightAdvice } from '../../core/light/aimForHighlight';
import { catchLights } from '../../core/light/catchLight';
import { edgeLights } from '../../core/light/edgeLight';
import { highlightAtFeet } from '../../core/light/highlightAtFeet';
import { keyAdvice } from '../../core/light/keyDistance';
import { type LightScene, lightScene } from '../../core/light/lightScene';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { lightNow } from '../../core/report/light/lightNow';
import { lightSentences } from '../../core/report/light/lightSentences';
import type { SetupLight } from '../../core/report/light/types';
import type { SetupReport } from '../../core/report/types';
import { lightUnitOf } from '../../core/units/illuminance';
import type { LengthSystem } from '../../core/units/lengths';
import type { InstantLight, KeyWays } from './reportApi';

/** Of the last instant: what has not changed since is taken over. */
let lastScene: LightScene | null = null;

const setupIn = (plan: Plan, setupId: string | null): Setup | null =>
  plan.setups.find(({ id }) => id === setupId) ?? null;

/** What falls on the faces at an instant, through a setup or on the roof. */
export function answerLightNow(plan: Plan, setupId: string | null, seconds: number): InstantLight {
  const setup = setupIn(plan, setupId);
  const scene = lightScene(plan, setup, seconds, lastScene);
  lastScene = scene;
  return {
    ...lightNow(plan, setup, scene),
    eyes: setup ? catchLights(plan, setup, seconds, scene) : [],
    edges: setup ? edgeLights(plan, setup, seconds, scene) : [],
  };
}

const keyOf = ({ key, lampId, lampLabel }: KeyedFace): KeyWays['key'] => ({ ...key, lampId, lampLabel });

/** All ways to have a performer's key so many stops under the exposure. */
export function answerKeyWays(
  plan: Plan,
  setupId: string,
  performerId: string,
  seconds: number,
  stopsUnder: number,
): KeyWays | Refused {
  const setup = setupIn(plan, setupId);
  if (!setup) return { refused: 'There is no setup to expose for.' };
  const keyed = keyedFace(plan, setup, performerId, seconds);
  if (isRefused(keyed)) return keyed;
  const ways = keyAdvice(plan, setup, performerId, seconds, stopsUnder);
  if (isRefused(ways)) return ways;
  const { dim, distance, scrim, gel } = ways;
  const onExposure = stopForKey(plan, setup, performerId, seconds);
  const stop = stopForKey(plan, setup, performerId, seconds, stopsUnder);
  return { key: keyOf(keyed), onExposure, stop, dim, distance, scrim, gel };
}

/** Where a lamp has to be for its highlight to lie before a performer's feet. */
export function answerHighlight(
  plan: Plan,
  setupId: string,
  lampId: string,
  performerId: string,
  seconds: number,
): HighlightAdvice | Refused {
  const setup = setupIn(plan, setupId);
  return setup
    ? highlightAtFeet(plan, setup, lampId, performerId, seconds)
    : { refused: 'There is no setup to see it.' };
}

/** The same with its sentences in other lengths, and levels in the unit that goes with them. */
export const inLengths = (
  plan: Plan,
  setup: Setup,
  seen: SetupReport,
  light: SetupLight,
  lengths: LengthSystem,
): SetupLight =>
  lengths === 'm'
    ? light
    : {
        ...light,
        sentences: lightSentences(plan, setup, light, seen, { lengths, unit: lightUnitOf(lengths) }),
      };
