import { acos, atan2 } from '../../units/steadyMath';
import { beamCurve } from '../beam';
import { dot, length, type Vec3 } from '../build/vector';
import type { LampForm } from '../types';
import { candelaTable } from './candelaTable';
import { lampFrame } from './lampFrame';

/**
 * How strong a lamp is along a way from it, 0..1 of its peak. The way may be of any length; the cosine between it
 * and the lamp's axis is given, since whoever asks many times has it at hand.
 */
export type LampShare = (way: Vec3, cosine: number) => number;

const DEGREES = 180 / Math.PI;

/** How strong a lamp is by direction: by its measured table where it has one, else by the curve of its beam and field. */
export function lampShare(lamp: LampForm): LampShare {
  if (!lamp.distribution) {
    const curve = beamCurve(lamp);
    return (_way, cosine) => curve(cosine);
  }
  const { candelaAt, peakCandela, isAxial } = candelaTable(lamp.distribution);
  if (isAxial) return (_way, cosine) => candelaAt(acos(cosine) * DEGREES, 0) / peakCandela;
  const { right, up } = lampFrame(lamp.direction);
  return (way, cosine) =>
    candelaAt(acos(cosine) * DEGREES, atan2(dot(way, up), dot(way, right)) * DEGREES) / peakCandela;
}

/** Candela of a lamp along a way from it, of any length but none. */
export function intensity(lamp: LampForm, way: Vec3): number {
  return lamp.peakCandela * lampShare(lamp)(way, dot(way, lamp.direction) / length(way));
}
