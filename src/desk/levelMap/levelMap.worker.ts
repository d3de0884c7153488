import { expose } from 'comlink';
import { holdModel } from '../../core/form/models/modelShelf';
import { levelGridSteps } from '../../core/light/levelGrid';
import { type LightScene, lightScene } from '../../core/light/lightScene';
import { placeReading } from '../../core/light/placeReading';
import { frameLevelSteps, spotAt } from '../../core/light/spotReading';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { withNames } from '../../core/plan/withNames';
import { unpackPlan } from '../planWire';
import { HEARING } from '../workers/hearing';
import { stepping } from '../workers/stepping';
import type { LevelMapApi } from './levelMapApi';

let held: Plan | null = null;
const work = { map: stepping(), frame: stepping() };
/** The last scene that was asked for spots. */
let scene: { readonly of: readonly unknown[]; readonly scene: LightScene } | null = null;

function planHeld(): Plan {
  if (!held) throw new Error('level map worker: asked before it held a plan');
  return withNames(held);
}

const setupIn = (plan: Plan, setupId: string | null): Setup | null =>
  plan.setups.find(({ id }) => id === setupId) ?? null;

function sceneOf(plan: Plan, setup: Setup | null, seconds: number): LightScene {
  const of = [plan, setup, seconds];
  if (!scene || !of.every((each, k) => each === scene?.of[k]))
    scene = { of, scene: lightScene(plan, setup, seconds, scene?.scene ?? null) };
  return scene.scene;
}

const api: LevelMapApi = {
  ...HEARING,
  holdModel: (sha256, model) => {
    holdModel(sha256, model);
    scene = null;
  },
  hold: (packed) => {
    held = unpackPlan(held, packed);
  },
  map: (setupId, seconds, question) => {
    const plan = planHeld();
    return work.map.taken(levelGridSteps(plan, setupIn(plan, setupId), seconds, question));
  },
  frame: async (setupId, seconds, columns) => {
    const plan = planHeld();
    const setup = setupIn(plan, setupId);
    return setup && work.frame.taken(frameLevelSteps(plan, setup, seconds, columns));
  },
  spot: (setupId, seconds, [x, y]) => {
    const plan = planHeld();
    const setup = setupIn(plan, setupId);
    return setup && spotAt(plan, setup, seconds, x, y, sceneOf(plan, setup, seconds));
  },
  place: (setupId, seconds, spot, question) => {
    const plan = planHeld();
    return placeReading(sceneOf(plan, setupIn(plan, setupId), seconds), spot, question);
  },
  giveUp: (what) => work[what].giveUp(),
};

expose(api);
