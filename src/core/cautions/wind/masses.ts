import type { Cloth } from '../../form/gear/cloth';
import type { GearOf } from '../../form/gear/references';
import { screenSize } from '../../form/gear/screen';
import type { HeadClass, StandClass } from '../../plan/schema/kit';
import { hypot } from '../../units/steadyMath';

/** Aluminium tube of 2 mm, a third more for collars, knobs and feet: kg for each m² of its outside. Source: common practice, no source */
const TUBE_KG_PER_SQUARE_METRE = 7;
/** A lamp with its yoke by the room that it takes, kg/m³. Source: common practice, no source */
const HEAD_KG_PER_CUBIC_METRE = 250;
/** A wire or tube round a cloth, kg/m, and the cloth in it, kg/m². Source: common practice, no source */
const FRAME_KG_PER_METRE = 0.45;
const CLOTH_KG_PER_SQUARE_METRE = 0.35;
/** An arm and the grip head that holds it, kg/m and kg. Source: common practice, no source */
const ARM_KG_PER_METRE = 1;
const GRIP_HEAD_KG = 0.7;
/** A monitor by its face, kg/m². Source: common practice, no source */
const MONITOR_KG_PER_SQUARE_METRE = 25;

/** What a stand of a class weighs, kg: as its class says, else as its tubes would in aluminium, which is light. */
export function standKilograms(standClass: StandClass): number {
  if (standClass.kilograms !== undefined) return standClass.kilograms;
  const { sections, baseTubeMetres, tubeStepMetres, legTubeMetres, highestMetres } = standClass;
  const rise = highestMetres / sections;
  const column = Array.from({ length: sections }, (_, k) =>
    Math.max(baseTubeMetres - tubeStepMetres * k, 0.01),
  ).reduce((sum, diameter) => sum + Math.PI * diameter * rise, 0);
  const leg = hypot(standClass.footprintMetres / 2, standClass.collarMetres);
  // With its brace, which is half as long and half as thick.
  const legs = 3 * Math.PI * legTubeMetres * leg * 1.25;
  return (column + legs) * TUBE_KG_PER_SQUARE_METRE;
}

/** What a head of a class weighs with its yoke, kg. */
export function headKilograms({ kilograms, size: [width, height, depth] }: HeadClass): number {
  return kilograms ?? width * height * depth * HEAD_KG_PER_CUBIC_METRE;
}

/** What a flag, a frame or a bounce weighs, kg. */
export function clothKilograms({ kilograms, size: [width, height] }: Cloth): number {
  if (kilograms !== undefined) return kilograms;
  return 2 * (width + height) * FRAME_KG_PER_METRE + width * height * CLOTH_KG_PER_SQUARE_METRE;
}

/** What an arm with its grip head weighs, kg. */
export const armKilograms = (lengthMetres: number): number => GRIP_HEAD_KG + lengthMetres * ARM_KG_PER_METRE;

/** What a monitor weighs, kg. */
export function monitorKilograms(monitor: GearOf<'monitor'>): number {
  const [width, height] = screenSize(monitor.diagonalMetres);
  return width * height * MONITOR_KG_PER_SQUARE_METRE;
}
