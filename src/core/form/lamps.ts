import { dimAt, flickersAt } from '../plan/cues';
import type { HeadClass } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import { moved, turned } from './build/placement';
import { add, scale, type Vec3 } from './build/vector';
import { flickerShare } from './flicker';
import { type BulbString, bulbPlaces } from './gear/bulbString';
import { headPlace } from './gear/headPlace';
import { glassMetres } from './gear/housings/bulb';
import { FORWARD } from './gear/housings/types';
import { lampFace } from './gear/lampFace';
import { type Practical, practicalPlacement } from './gear/practical';
import { type GearOf, headClassOf } from './gear/references';
import { type LampLight, throughBefore } from './photometry/throughBefore';
import type { LampForm } from './types';

/**
 * Every source of light in the plan at a moment of the action's clock, in the plan's order: a head and a practical are
 * one each, a string one for each bulb. Positions are those of the lens or glowing face, world metres; peak candela has
 * in it the dim, the modifier, the flicker and what is put before the lamp. Lamps that are dimmed to nothing are there
 * with 0 cd.
 */
export function lampsAt(plan: Plan, seconds: number): readonly LampForm[] {
  return plan.gear.flatMap((gear): LampForm[] => {
    switch (gear.kind) {
      case 'head':
        return [headLamp(gear, plan, seconds)];
      case 'practical':
        return [practicalLamp(gear, plan, seconds)];
      case 'bulb string':
        return bulbLamps(gear, plan, seconds);
      default:
        return [];
    }
  });
}

function headLamp(head: GearOf<'head'>, plan: Plan, seconds: number): LampForm {
  const headClass = headClassOf(head, plan);
  const { pivot, direction } = headPlace(head, headClass, plan);
  const { faceMetres, glowMetres, beam } = lampFace(headClass, head.modifier ?? null);
  const light = throughBefore(beam, headClass.kelvin, head.before);
  return {
    ...lampOf(head.id, headClass, light),
    position: add(pivot, scale(direction, faceMetres)),
    direction,
    peakCandela: light.beam.peakCandela * dimAt(head, plan, seconds),
    sizeMetres: glowMetres,
  };
}

function practicalLamp(practical: Practical, plan: Plan, seconds: number): LampForm {
  const headClass = headClassOf(practical, plan);
  const placement = practicalPlacement(practical, headClass);
  const { faceMetres, glowMetres, beam } = lampFace(headClass, null);
  const { flicker } = practical;
  const light = throughBefore(beam, headClass.kelvin, practical.before);
  return {
    ...lampOf(practical.id, headClass, light),
    position: moved(placement, scale(FORWARD, faceMetres)),
    direction: headClass.form === 'bulb' ? DOWN : turned(placement, FORWARD),
    peakCandela:
      light.beam.peakCandela *
      dimAt(practical, plan, seconds) *
      (flicker && flickersAt(practical, plan, seconds) ? flickerShare(flicker, seconds) : 1),
    tint: practical.tint ?? null,
    sizeMetres: glowMetres,
  };
}

const DOWN: Vec3 = [0, -1, 0];

/** A bulb on a string shines all round, whatever its class says of a beam, unless its light was measured. */
function bulbLamps(string: BulbString, plan: Plan, seconds: number): LampForm[] {
  const headClass = headClassOf(string, plan);
  const { size } = headClass;
  const dim = dimAt(string, plan, seconds);
  const { beam } = lampFace(headClass, null);
  const light = throughBefore(beam, headClass.kelvin, string.before);
  return bulbPlaces(string, size).map((position) => ({
    ...lampOf(string.id, headClass, light),
    ...(light.beam.distribution === null && ALL_ROUND),
    position,
    direction: DOWN,
    peakCandela: light.beam.peakCandela * dim,
    sizeMetres: [size[0], glassMetres(size), size[0]],
  }));
}

const ALL_ROUND = { beamDegrees: 360, fieldDegrees: 360 };

const lampOf = (
  itemId: string,
  { id }: HeadClass,
  { beam: { beamDegrees, fieldDegrees, distribution }, kelvin }: LampLight,
) => ({
  itemId,
  headClassId: id,
  beamDegrees,
  fieldDegrees,
  distribution,
  kelvin,
  tint: null,
});
