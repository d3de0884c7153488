import type { ItemForm } from '../form/types';
import type { Plan } from '../plan/schema/plan';
import { stageOf } from '../sight/stage';
import { blockersOf } from './blockers';
import { type LightScene, lightScene } from './lightScene';

/**
 * The light of the same instant with gear that was moved or changed, `plan` being the scene's own plan but for that. The
 * cast stays as it is, which is what takes the time: a lamp can be tried in many places. What rides under a camera, or
 * is gone because another setup's camera rides on it, stays so.
 */
export function withMovedGear(scene: LightScene, plan: Plan): LightScene {
  const before = new Map(scene.blockers.stage.forms.map((form) => [form.id, form]));
  const riding = new Set(plan.gear.flatMap((gear) => (gear.kind === 'dolly' && gear.rides ? [gear.id] : [])));
  const bare = lightScene({ ...plan, cast: [] }, null, scene.seconds);
  const forms = bare.blockers.stage.forms.map(
    (form): ItemForm => (riding.has(form.id) ? (before.get(form.id) ?? { ...form, parts: [] }) : form),
  );
  const cast = scene.blockers.stage.forms.filter(({ section }) => section === 'cast');
  // Behind all else, so that the numbers of the lamps' own items stay.
  const stage = stageOf([...forms, ...cast], scene.blockers.stage);
  return { ...bare, plan, blockers: blockersOf(stage) };
}
