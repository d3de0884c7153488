import { add, directionOf, dot, length, scale, subtract, type Vec3 } from '../form/build/vector';
import { type Cloth, clothSheet, isCloth } from '../form/gear/cloth';
import { headPlace } from '../form/gear/headPlace';
import { headClassOf } from '../form/gear/references';
import { named } from '../plan/named';
import type { Gear } from '../plan/schema/gear';
import type { HeadClass } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import { acos } from '../units/steadyMath';
import { caution } from './caution';
import type { Caution } from './types';
import { figure, metres } from './words';

/** A kilowatt of filament keeps a metre from cloth in its beam; a distance goes with the root of the watts, as heat thins with its square. Source: common practice, no source */
const KILOWATT_METRES = 1;
/** Beside and behind the beam, where only the housing is hot. Source: common practice, no source */
const ASIDE_SHARE = 1 / 3;
/** Whiter than this, or weaker, a lamp of today is no filament. Source: common practice, no source */
const WARMEST_KELVIN = 3400;
const LEAST_WATTS = 100;
const FILAMENTS: ReadonlySet<HeadClass['form']> = new Set(['spot', 'fresnel', 'bulb']);

/** Whether a class of lamp gets hot: as it says, else whether its form, white and watts are those of a filament. */
const isHot = ({ hot, form, kelvin, watts }: HeadClass): boolean =>
  hot ?? (FILAMENTS.has(form) && kelvin <= WARMEST_KELVIN && watts >= LEAST_WATTS);

/** How far a hot lamp of so many watts keeps from cloth in its beam, metres. */
const heatMetres = (watts: number): number => KILOWATT_METRES * Math.sqrt(watts / 1000);

interface HotLamp {
  readonly id: string;
  readonly label: string;
  readonly lampClass: HeadClass;
  readonly at: Vec3;
  readonly direction: Vec3;
}

function hotLamp(plan: Plan, gear: Gear): HotLamp | null {
  if (gear.kind !== 'head' && gear.kind !== 'practical') return null;
  const lampClass = headClassOf(gear, plan);
  if (!isHot(lampClass)) return null;
  const { id, label } = gear;
  if (gear.kind === 'practical')
    return { id, label, lampClass, at: gear.at, direction: directionOf(gear.headingDegrees) };
  const { pivot, direction } = headPlace(gear, lampClass, plan);
  const face = add(pivot, scale(direction, lampClass.size[2] / 2));
  return { id, label, lampClass, at: face, direction };
}

/** The place of a cloth that is nearest to a point. */
function nearestOnCloth(plan: Plan, cloth: Cloth, to: Vec3): Vec3 {
  const { middle, right, up } = clothSheet(cloth, plan);
  const away = subtract(to, middle);
  const along = (side: Vec3): number =>
    Math.min(Math.max(dot(away, side) / Math.max(dot(side, side), 1e-9), -1), 1);
  return add(middle, add(scale(right, along(right)), scale(up, along(up))));
}

function tooNear(plan: Plan, lamp: HotLamp, cloth: Cloth): Caution | null {
  const nearest = nearestOnCloth(plan, cloth, lamp.at);
  const way = subtract(nearest, lamp.at);
  const away = length(way);
  const cosine = away === 0 ? 1 : Math.min(Math.max(dot(way, lamp.direction) / away, -1), 1);
  const isInBeam = (acos(cosine) * 180) / Math.PI <= lamp.lampClass.fieldDegrees / 2;
  const least = heatMetres(lamp.lampClass.watts) * (isInBeam ? 1 : ASIDE_SHARE);
  if (away >= least) return null;
  return caution({
    kind: 'heat',
    about: 'heat-cloth',
    standing: 'breaks',
    itemIds: [lamp.id, cloth.id],
    place: [...nearest],
    figures: [{ name: 'from the cloth', value: away, unit: 'm', expected: least }],
    sentence: `${named(lamp.label)} is ${metres(away, 2)} from ${named(cloth.label)}${isInBeam ? ', which is in its beam' : ''}: ${figure(lamp.lampClass.watts, 0, 'W')} that run hot keep about ${metres(least, 2)} from cloth. Move them apart, or use cloth that is made for the heat.`,
    sources: [],
  });
}

/** Heads and practicals that get hot, and cloth near them. What stays cool, as most of today's lamps, is left out. */
export function heatCautions(plan: Plan): readonly Caution[] {
  const cloths = plan.gear.filter(isCloth);
  return plan.gear.flatMap((gear): readonly Caution[] => {
    const lamp = hotLamp(plan, gear);
    return lamp ? cloths.flatMap((cloth) => tooNear(plan, lamp, cloth) ?? []) : [];
  });
}
