import type { HeadClass } from '../../plan/schema/kit';
import type { Vec3 } from '../build/vector';
import type { LampBeam } from '../photometry/ownBeam';
import { housingOf } from './housings';
import { modifiedBeam } from './modifiedBeam';
import { fitModifier, type Modifier } from './modifier';

/** What a lamp's light needs of its form: where it glows and how, with its modifier. */
export interface LampFace {
  /** From the middle of the housing to what glows, along the axis; metres. */
  readonly faceMetres: number;
  /** [width, height, depth] of what glows; metres. */
  readonly glowMetres: Vec3;
  readonly beam: LampBeam;
}

/** Lamps are asked for at every frame, and their faces only change with their class. */
const faces = new WeakMap<HeadClass, Map<Modifier | null, LampFace>>();

/** The glowing face of a lamp of a class with a modifier, or without. */
export function lampFace(headClass: HeadClass, modifier: Modifier | null): LampFace {
  const known = faces.get(headClass) ?? new Map<Modifier | null, LampFace>();
  faces.set(headClass, known);
  const face = known.get(modifier) ?? makeFace(headClass, modifier);
  known.set(modifier, face);
  return face;
}

function makeFace(headClass: HeadClass, modifier: Modifier | null): LampFace {
  const housing = housingOf(headClass);
  const { faceMetres, glowMetres } = modifier ? fitModifier(modifier, housing, headClass) : housing;
  return { faceMetres, glowMetres, beam: modifiedBeam(headClass, modifier) };
}
