import { dot, length, subtract, unit, type Vec3 } from '../../form/build/vector';
import { lampsAt } from '../../form/lamps';
import { blockersOf } from '../../light/blockers';
import { faceAt } from '../../light/face';
import { lampLight } from '../../light/lampLight';
import { type LightScene, lightScene, sceneAmong } from '../../light/lightScene';
import { withMovedGear } from '../../light/movedGear';
import { dimAt, type Lamp } from '../../plan/cues';
import { carrierOf } from '../../plan/edits/anchorOf';
import { played } from '../../plan/played';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { stageOf } from '../../sight/stage';
import { acos, log } from '../../units/steadyMath';
import type { Tolerance } from './types';

/** What happens to a lamp's light on whom it is for. */
export interface LampChange {
  readonly lampId: string;
  readonly label: string;
  /** Whom it lights most; null where it reaches nobody. */
  readonly onWhom: string | null;
  /** What it loses there, negative where it gains. */
  readonly lossStops: number;
  /** How far its light turns there. */
  readonly degrees: number;
}

/** Somebody's face in a lamp's light. */
interface Lit {
  readonly name: string;
  readonly id: string;
  readonly at: Vec3;
  readonly lux: number;
}

const stopsOf = (before: number, after: number): number => log(before / after) / Math.LN2;

const degreesBetween = (a: Vec3, b: Vec3): number =>
  (acos(Math.min(1, Math.max(-1, dot(unit(a), unit(b))))) * 180) / Math.PI;

const NOTHING_THERE = blockersOf(stageOf([]));

/** How far a lamp's light turns on somebody. */
const turnOf = ({ at }: Lit, was: Vec3, is: Vec3): number =>
  degreesBetween(subtract(was, at), subtract(is, at));

/** Lux of a lamp at a place on a surface that faces it, none of it shaded by `ignored`. */
function luxAt(scene: LightScene, lampId: string, at: Vec3, ignored: string): number {
  let lux = 0;
  for (const lamp of scene.lamps) {
    if (lamp.form.itemId !== lampId) continue;
    for (const ray of lampLight(scene, lamp, at, { ignore: new Set([ignored]) })?.rays ?? [])
      lux += length(ray);
  }
  return lux;
}

/** Whether a lamp keeps its level and its direction at what it is aimed at, by the inverse square alone. */
function keepsAim(aim: Vec3, was: Vec3, is: Vec3, { levelStops, angleDegrees }: Tolerance): boolean {
  const [from, to] = [subtract(was, aim), subtract(is, aim)];
  if (Math.abs(2 * stopsOf(length(to), length(from))) > levelStops) return false;
  return degreesBetween(from, to) <= angleDegrees;
}

/** Asks what moved lamps lose, in one light for all that is tried. */
export class LampWatch {
  private readonly scene: LightScene;
  private readonly acted: Plan;

  /** The plan as it is, through a setup at an instant of the action's clock. */
  constructor(
    private readonly plan: Plan,
    setup: Setup,
    private readonly seconds: number,
  ) {
    this.acted = played(plan, setup);
    this.scene = lightScene(plan, setup, seconds);
  }

  /** By distance and direction from what lamps are aimed at, whether they keep within a tolerance: quick, no shadows. */
  mayKeep(after: Plan, tolerance: Tolerance): boolean {
    for (const gear of after.gear) {
      if (gear.kind !== 'head' || !this.isLit(gear)) continue;
      const [was, is] = [this.placeOf(this.plan, gear.id), this.placeOf(after, gear.id)];
      if (was && is && !keepsAim(gear.aim, was, is, tolerance)) return false;
    }
    return true;
  }

  /** The same for lamps that are moved over the deck by [x, z], metres, and stay aimed at what they are aimed at. */
  mayKeepMoved(lampIds: readonly string[], by: Spot, tolerance: Tolerance): boolean {
    return this.plan.gear.every((gear) => {
      if (gear.kind !== 'head' || !this.isLit(gear) || !lampIds.includes(gear.id)) return true;
      const was = this.placeOf(this.plan, gear.id);
      return !was || keepsAim(gear.aim, was, [was[0] + by[0], was[1], was[2] + by[1]], tolerance);
    });
  }

  private isLit(lamp: Lamp): boolean {
    return dimAt(lamp, this.plan, this.seconds) > 0;
  }

  private readonly places = new WeakMap<Plan['gear'], Map<string, Vec3>>();

  private placeOf(plan: Plan, lampId: string): Vec3 | null {
    let places = this.places.get(plan.gear);
    if (!places) {
      places = new Map(lampsAt(plan, this.seconds).map(({ itemId, position }) => [itemId, position]));
      this.places.set(plan.gear, places);
    }
    return places.get(lampId) ?? null;
  }

  private readonly lit = new Map<string, Lit | null>();

  /** Whom a lamp lights most as the plan is; null where it reaches nobody. */
  private mostLit(lampId: string): Lit | null {
    const known = this.lit.get(lampId);
    if (known !== undefined) return known;
    let best: Lit | null = null;
    for (const performer of this.acted.cast) {
      const face = faceAt(performer, this.acted, this.seconds);
      const lux = face ? luxAt(this.scene, lampId, face.at, performer.id) : 0;
      if (face && lux > (best?.lux ?? 0))
        best = { name: performer.label, id: performer.id, at: face.at, lux };
    }
    this.lit.set(lampId, best);
    return best;
  }

  private hasMoved(after: Plan, lampId: string): boolean {
    const [was, is] = [this.placeOf(this.plan, lampId), this.placeOf(after, lampId)];
    return was !== null && is !== null && length(subtract(is, was)) > 1e-6;
  }

  /** What each lamp that was moved does to the face that it lights most, shadows and beam included. */
  changes(after: Plan): readonly LampChange[] {
    return this.changesOf(after, (lampId) => this.hasMoved(after, lampId));
  }

  /**
   * Whether what it does to each keeps within a tolerance, as `keepsWithin` has it of `changes`. First is asked what
   * needs no shadows: how far light turns, and whether it is too weak with nothing in its way.
   */
  keeps(after: Plan, tolerance: Tolerance): boolean {
    const isOut = this.ownLampIds().some((lampId) => {
      if (!this.hasMoved(after, lampId)) return false;
      const [best, was, is] = this.litBetween(after, lampId);
      if (!best || !was || !is) return false;
      if (!(turnOf(best, was, is) <= tolerance.angleDegrees)) return true;
      const most = luxAt(this.unshaded(after, lampId), lampId, best.at, best.id);
      return !(most > 0) || stopsOf(best.lux, most) > tolerance.levelStops;
    });
    return !isOut && keepsWithin(this.changes(after), tolerance);
  }

  /** A lamp of a changed plan with nothing in its light. */
  private unshaded(after: Plan, lampId: string): LightScene {
    const carrier = carrierOf(after, lampId);
    const gear = after.gear.filter(({ id }) => id === lampId || id === carrier);
    return sceneAmong({ ...after, gear }, this.seconds, NOTHING_THERE);
  }

  /** The lamps that are on, each once. */
  private ownLampIds(): readonly string[] {
    return [...new Set(this.scene.lamps.map(({ form }) => form.itemId))];
  }

  /** Whom a lamp lights most, and where it is as the plan is and in a changed one. */
  private litBetween(
    after: Plan,
    lampId: string,
  ): readonly [best: Lit | null, was: Vec3 | null, is: Vec3 | null] {
    return [this.mostLit(lampId), this.placeOf(this.plan, lampId), this.placeOf(after, lampId)];
  }

  /** The same of all heads, whatever was moved: something may come into the light of another. */
  changesOfAll(after: Plan): readonly LampChange[] {
    const heads = new Set(this.plan.gear.flatMap(({ id, kind }) => (kind === 'head' ? [id] : [])));
    return this.changesOf(after, (lampId) => heads.has(lampId));
  }

  private changesOf(after: Plan, isAsked: (lampId: string) => boolean): readonly LampChange[] {
    const lampIds = this.ownLampIds().filter(isAsked);
    if (lampIds.length === 0) return [];
    const then = withMovedGear(this.scene, after);
    return lampIds.map((lampId): LampChange => {
      const label = this.plan.gear.find(({ id }) => id === lampId)?.label ?? lampId;
      const [best, was, is] = this.litBetween(after, lampId);
      if (!best || !was || !is) return { lampId, label, onWhom: null, lossStops: 0, degrees: 0 };
      const lux = luxAt(then, lampId, best.at, best.id);
      return {
        lampId,
        label,
        onWhom: best.name,
        lossStops: lux > 0 ? stopsOf(best.lux, lux) : Number.POSITIVE_INFINITY,
        degrees: turnOf(best, was, is),
      };
    });
  }
}

/** Whether what happens to some lamps keeps within a tolerance. */
export const keepsWithin = (
  changes: readonly LampChange[],
  { levelStops, angleDegrees }: Tolerance,
): boolean =>
  changes.every(({ lossStops, degrees }) => Math.abs(lossStops) <= levelStops && degrees <= angleDegrees);
