import { lampsAt } from '../form/lamps';
import { type LampShare, lampShare } from '../form/photometry/lampShare';
import type { LampForm } from '../form/types';
import { formsThrough } from '../optics/riding';
import { isLamp } from '../plan/cues';
import type { Gear } from '../plan/schema/gear';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { type StagePart, stageOf } from '../sight/stage';
import { type Ambient, ambientOf } from './ambient';
import { type Blockers, blockersOf } from './blockers';
import { type GlowFace, glowFaceIn, reachOf } from './glowFace';

/** A lamp that is on, and what of the scene is its own. */
export interface SceneLamp {
  readonly form: LampForm;
  readonly share: LampShare;
  readonly face: GlowFace;
  readonly reachMetres: number;
  /** Numbers of its own item and of the stand that carries it; −1 for no stand. */
  readonly item: number;
  readonly carrier: number;
  /** Whether it wears barn doors, which cut its light though they are its own. */
  readonly hasDoors: boolean;
}

/** A cloth that gives on light: a bounce, or a diffusion frame. */
export type GivingCloth = Extract<Gear, { kind: 'bounce' | 'frame' }>;

/** The lamps and all that stands in their light at one instant. */
export interface LightScene {
  readonly plan: Plan;
  readonly seconds: number;
  readonly lamps: readonly SceneLamp[];
  readonly cloths: readonly GivingCloth[];
  readonly blockers: Blockers;
  /** What sky, streets and moon give. */
  readonly ambient: Ambient;
}

/** A lamp with what of a scene is its own, of the numbers that its items have. */
export function sceneLamp(
  form: LampForm,
  plan: Plan,
  byId: ReadonlyMap<string, Gear>,
  items: ReadonlyMap<string, number>,
): SceneLamp {
  const gear = byId.get(form.itemId);
  if (!gear || !isLamp(gear))
    throw new Error(`lightScene: “${form.itemId}” shines and is no lamp of the plan`);
  const carrierId = gear.kind === 'head' && 'on' in gear.place ? gear.place.on : null;
  const face = glowFaceIn(plan, form, gear);
  return {
    form,
    share: lampShare(form),
    face,
    reachMetres: reachOf(face),
    item: items.get(form.itemId) ?? -1,
    carrier: (carrierId === null ? undefined : items.get(carrierId)) ?? -1,
    hasDoors: gear.kind === 'head' && gear.modifier === 'barn doors',
  };
}

/**
 * The light of an instant of the action's clock, seconds: through a setup with its cheated marks and the dolly under
 * its camera, or on the roof as the plan has it for none. `before`: the scene of another instant, whose unchanged
 * parts are taken over.
 */
export function lightScene(
  plan: Plan,
  setup: Setup | null,
  seconds: number,
  before: LightScene | null = null,
): LightScene {
  const stage = stageOf(formsThrough(plan, setup, seconds), before?.blockers.stage ?? null);
  return sceneAmong(
    plan,
    seconds,
    before && before.blockers.stage === stage ? before.blockers : blockersOf(stage),
  );
}

/** The same among blockers that stand already; what is not among them is in nobody's light. */
export function sceneAmong(plan: Plan, seconds: number, blockers: Blockers): LightScene {
  const items = new Map(blockers.stage.forms.map(({ id }, item) => [id, item]));
  const byId = new Map(plan.gear.map((gear) => [gear.id, gear]));
  return {
    plan,
    seconds,
    lamps: lampsAt(plan, seconds)
      .filter(({ peakCandela }) => peakCandela > 0)
      .map((form) => sceneLamp(form, plan, byId, items)),
    cloths: plan.gear.filter(
      (gear): gear is GivingCloth =>
        (gear.kind === 'bounce' && gear.reflectance > 0) || (gear.kind === 'frame' && gear.transmission > 0),
    ),
    blockers,
    ambient: ambientOf(plan),
  };
}

/** Whether a part is a lamp's own and never in its way: its housing, yoke and modifier, but not its barn doors. */
export const isOwnPart = (lamp: SceneLamp, part: StagePart): boolean =>
  part.item === lamp.item && !(lamp.hasDoors && part.name === 'modifier');
