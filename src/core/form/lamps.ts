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
import type { LampBeam } from './photometry/ownBeam';
import type { LampForm } from './types';

/**
 * Every source of light in the plan at a moment of the action's clock, in the plan's order: a head and a practical are
 * one each, a string one for each bulb. Positions are those of the lens or glowing face, world metres; peak candela
 * has the dim, the modifier and the flicker in it. Lamps that are dimmed to nothing are there with 0 cd.
 */
export function lampsAt(plan: Plan, seconds: number): readonly LampForm[] {
  return plan.gear.flatMap((gear): LampForm[] => {
    switch (gear.kind) {
      case 'head':
        return [headLamp(gear, plan)];
      case 'practical':
        return [practicalLamp(gear, headClassOf(gear, plan), seconds)];
      case 'bulb string':
        return bulbLamps(gear, headClassOf(gear, plan));
      default:
        return [];
    }
  });
}

function headLamp(head: GearOf<'head'>, plan: Plan): LampForm {
  const headClass = headClassOf(head, plan);
  const { pivot, direction } = headPlace(head, headClass, plan);
  const { faceMetres, glowMetres, beam } = lampFace(headClass, head.modifier ?? null);
  return {
    itemId: head.id,
    headClassId: headClass.id,
    position: add(pivot, scale(direction, faceMetres)),
    direction,
    peakCandela: beam.peakCandela * head.dim,
    beamDegrees: beam.beamDegrees,
    fieldDegrees: beam.fieldDegrees,
    distribution: beam.distribution,
    kelvin: headClass.kelvin,
    tint: null,
    sizeMetres: glowMetres,
  };
}

function practicalLamp(practical: Practical, headClass: HeadClass, seconds: number): LampForm {
  const placement = practicalPlacement(practical, headClass);
  const { faceMetres, glowMetres, beam } = lampFace(headClass, null);
  const { flicker } = practical;
  return {
    ...lampOf(practical.id, headClass, beam),
    position: moved(placement, scale(FORWARD, faceMetres)),
    direction: headClass.form === 'bulb' ? DOWN : turned(placement, FORWARD),
    peakCandela: beam.peakCandela * practical.dim * (flicker ? flickerShare(flicker, seconds) : 1),
    tint: practical.tint ?? null,
    sizeMetres: glowMetres,
  };
}

const DOWN: Vec3 = [0, -1, 0];

/** A bulb on a string shines all round, whatever its class says of a beam, unless its light was measured. */
function bulbLamps(string: BulbString, headClass: HeadClass): LampForm[] {
  const { size } = headClass;
  const { beam } = lampFace(headClass, null);
  return bulbPlaces(string, size).map((position) => ({
    ...lampOf(string.id, headClass, beam.distribution ? beam : { ...beam, ...ALL_ROUND }),
    position,
    direction: DOWN,
    peakCandela: beam.peakCandela * string.dim,
    sizeMetres: [size[0], glassMetres(size), size[0]],
  }));
}

const ALL_ROUND = { beamDegrees: 360, fieldDegrees: 360 };

const lampOf = (
  itemId: string,
  { id, kelvin }: HeadClass,
  { beamDegrees, fieldDegrees, distribution }: LampBeam,
) => ({
  itemId,
  headClassId: id,
  beamDegrees,
  fieldDegrees,
  distribution,
  kelvin,
  tint: null,
});
