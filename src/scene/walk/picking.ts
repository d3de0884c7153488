import type { Vec3 } from '../../core/form/build/vector';
import { formsThrough } from '../../core/optics/riding';
import { itemsOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { meets, type Ray } from '../../core/sight/rays';
import { type SightStage, type StagePart, stageOf, worldOf } from '../../core/sight/stage';
import { nearestOnSegment } from './closeness';

/** What lies under a pointer. */
export interface Picked {
  readonly id: string;
  /** Along the ray, metres. */
  readonly distance: number;
  readonly place: Vec3;
}

/** What a ray comes upon. */
export interface Sight {
  /** The item that it meets first; null for none, and for the ground. */
  readonly picked: Picked | null;
  /** How far it gets before anything solid, the ground too, stops it; Infinity in the open. Metres. */
  readonly openMetres: number;
}

export interface PickOptions {
  /** What a pixel is wide one metre before the eye, metres. */
  readonly widthAtOne: number;
  /** How far beside a thin thing a press still counts, pixels. */
  readonly tolerance: number;
  /** Picks the deck and the skyline as well, which otherwise only hide what is behind them. */
  readonly everything: boolean;
}

/** What a press means to turn the view on, unless it says otherwise. */
const GROUND: ReadonlySet<string> = new Set(['deck', 'skyline block']);
/** A part that looks larger than this gives way to a thin thing pressed beside; pixels. */
const LARGE_PIXELS = 120;
/** A thin thing may stand this far behind the surface that it touches, metres. */
const BEHIND_METRES = 0.15;

/** What is twice as far away is taken for so many pixels farther off. */
const PIXELS_BEHIND = 12;

interface Near extends Picked {
  readonly pixels: number;
}

/** Finds what a ray meets, by core/sight's exact rays; keeps what it knows of the parts from one question to the next. */
export class Picker {
  private stage: SightStage | null = null;
  private plan: Plan | null = null;
  private hidden: ReadonlySet<string> = new Set();

  /** What a ray meets, and how far it gets. Hidden items are not there. */
  look(plan: Plan, seconds: number, ray: Ray, options: PickOptions): Sight {
    const stage = this.stageFor(plan, seconds);
    let solid: (Picked & { readonly part: StagePart }) | null = null;
    let layer: Picked | null = null;
    const beside: Near[] = [];
    for (const part of stage.parts) {
      const form = stage.forms[part.item];
      const along = alongTo(ray, part, options);
      if (along === null || this.hidden.has(form.id)) continue;
      const { id } = form;
      const distance = meets(part, ray);
      if (distance < Infinity) {
        if (part.shape.openness !== null) {
          if (!layer || distance < layer.distance) layer = { id, distance, place: on(ray, distance) };
        } else if (!solid || distance < solid.distance) {
          solid = { id, distance, place: on(ray, distance), part };
        }
      } else if (!GROUND.has(form.kind)) {
        const near = besides(part, ray, along, options);
        if (near) beside.push({ id, ...near });
      }
    }
    const isGround = solid !== null && GROUND.has(stage.forms[solid.part.item].kind);
    const isLarge =
      solid !== null && solid.part.radius / (options.widthAtOne * solid.distance) > LARGE_PIXELS / 2;
    const openMetres = solid?.distance ?? Infinity;
    const reach = openMetres + BEHIND_METRES;
    if (!solid || isGround || isLarge) {
      const thin = meantOf(beside.filter(({ distance }) => distance < reach));
      if (thin) return { picked: strip(thin), openMetres };
    }
    if (solid && (!isGround || options.everything)) return { picked: strip(solid), openMetres };
    // A mesh is looked through, as long as something stands behind it.
    return { picked: layer && layer.distance < openMetres ? layer : null, openMetres };
  }

  /** Where a ray first meets anything solid but the items left out; null where it meets nothing. */
  firstSolid(plan: Plan, seconds: number, ray: Ray, except: ReadonlySet<string>): Picked | null {
    const stage = this.stageFor(plan, seconds);
    let best: Picked | null = null;
    for (const part of stage.parts) {
      const { id, kind } = stage.forms[part.item];
      if (part.shape.openness !== null || kind === 'skyline block') continue;
      if (except.has(id) || this.hidden.has(id)) continue;
      const distance = meets(part, ray);
      if (distance < (best?.distance ?? Infinity)) best = { id, distance, place: on(ray, distance) };
    }
    return best;
  }

  private stageFor(plan: Plan, seconds: number): SightStage {
    if (plan !== this.plan) {
      this.plan = plan;
      this.hidden = hiddenIn(plan);
    }
    this.stage = stageOf(formsThrough(plan, null, seconds), this.stage);
    return this.stage;
  }
}

/** Ids of what is left out of the roof's views. */
export function hiddenIn(plan: Plan): ReadonlySet<string> {
  return new Set(itemsOf(plan).flatMap(({ record }) => (record.hidden ? [record.id] : [])));
}

/** Of all that a press just misses, the one that is meant: near in the picture, and near to the eye. */
function meantOf(beside: readonly Near[]): Near | null {
  const nearest = Math.min(...beside.map(({ distance }) => distance));
  const cost = ({ pixels, distance }: Near): number => pixels + PIXELS_BEHIND * (distance / nearest - 1);
  return beside.reduce<Near | null>((best, near) => (best && cost(best) <= cost(near) ? best : near), null);
}

const strip = ({ id, distance, place }: Picked): Picked => ({ id, distance, place });

const on = ({ origin, direction }: Ray, distance: number): Vec3 => [
  origin[0] + direction[0] * distance,
  origin[1] + direction[1] * distance,
  origin[2] + direction[2] * distance,
];

/** How far along the ray a part's ball is nearest; null when the ray passes it by more than the tolerance. */
function alongTo(
  { origin, direction }: Ray,
  { centre, radius }: StagePart,
  options: PickOptions,
): number | null {
  const x = centre[0] - origin[0];
  const y = centre[1] - origin[1];
  const z = centre[2] - origin[2];
  const along = x * direction[0] + y * direction[1] + z * direction[2];
  if (along < -radius) return null;
  const away = x * x + y * y + z * z - along * along;
  const reach = radius + options.tolerance * options.widthAtOne * Math.max(0, along + radius);
  return away <= reach * reach ? along : null;
}

/** How near a ray that misses a part passes its round members, or all of it where it looks tiny; null when not near. */
function besides(
  part: StagePart,
  ray: Ray,
  along: number,
  { widthAtOne, tolerance }: PickOptions,
): Omit<Near, 'id'> | null {
  let best: Omit<Near, 'id'> | null = null;
  const consider = (distance: number, metres: number): void => {
    const pixels = Math.max(0, metres) / (widthAtOne * distance);
    if (distance <= 0 || pixels > tolerance || (best && best.pixels <= pixels)) return;
    best = { distance, place: on(ray, distance), pixels };
  };
  for (const { from, to, radius } of part.shape.tubes) {
    const [along, away] = nearestOnSegment(ray, worldOf(part, from), worldOf(part, to));
    consider(along, away - radius);
  }
  if (part.shape.tubes.length === 0 && along > 0 && part.radius < tolerance * widthAtOne * along) {
    const [, away] = nearestOnSegment(ray, part.centre, part.centre);
    consider(along, away - part.radius);
  }
  return best;
}
