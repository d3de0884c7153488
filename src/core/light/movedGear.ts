import type { ItemForm } from '../form/types';
import { formsThrough } from '../optics/riding';
import type { Plan } from '../plan/schema/plan';
import { type SightStage, stageOf } from '../sight/stage';
import { blockersOf } from './blockers';
import { type LightScene, sceneAmong } from './lightScene';

/** The latest stage of moved gear for each scene: the next differs from it by little, and keeps its parts. */
const LATEST = new WeakMap<LightScene, SightStage>();

/**
 * The light of the same instant with gear that was moved or changed, `plan` being the scene's own plan but for that. The
 * cast stays as it is, which is what takes the time: a lamp can be tried in many places. What rides under a camera, or
 * is gone because another setup's camera rides on it, stays so.
 */
export function withMovedGear(scene: LightScene, plan: Plan): LightScene {
  const own = scene.blockers.stage.forms;
  const before = new Map(own.map((form) => [form.id, form]));
  const riding = new Set(plan.gear.flatMap((gear) => (gear.kind === 'dolly' && gear.rides ? [gear.id] : [])));
  const bare: Plan = { ...plan, cast: [] };
  const forms = formsThrough(bare, null, scene.seconds).map(
    (form): ItemForm => (riding.has(form.id) ? (before.get(form.id) ?? { ...form, parts: [] }) : form),
  );
  // The cast behind all else, so that the numbers of the lamps' own items stay.
  const cast = own.filter(({ section }) => section === 'cast');
  const stage = stageOf([...forms, ...cast], LATEST.get(scene) ?? scene.blockers.stage);
  LATEST.set(scene, stage);
  return { ...sceneAmong(bare, scene.seconds, blockersOf(stage)), plan };
}
