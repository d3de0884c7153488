import { acos, cos, exp, log, pow } from '../units/steadyMath';

/** A lamp's light as published: candela on the axis, full angles of half and a tenth of it. */
export interface Beam {
  readonly peakCandela: number;
  readonly beamDegrees: number;
  readonly fieldDegrees: number;
}

const ALL_ROUND = 360;
const { LN2 } = Math;
const FLUX_STEPS = 720;

/** 1 − cos of half a full angle: how far off the axis its edge is. */
const edgeOf = (fullDegrees: number): number =>
  Math.max(1e-6, 1 - cos((Math.min(ALL_ROUND, fullDegrees) * Math.PI) / 360));

/** Whether a lamp is even all round, as a bare bulb is: half of its peak is nowhere. */
export const isAllRound = ({ beamDegrees }: Pick<Beam, 'beamDegrees'>): boolean => beamDegrees >= ALL_ROUND;

/** Whether a lamp lights nothing behind its face: its field ends before a right angle. */
export const lightsOnlyAhead = ({ fieldDegrees }: Pick<Beam, 'fieldDegrees'>): boolean => fieldDegrees < 180;

/** The power of {@link beamShare}. */
export function beamPower(beamDegrees: number, fieldDegrees: number): number {
  const half = edgeOf(beamDegrees);
  const tenth = Math.max(half * 1.05, edgeOf(fieldDegrees));
  return log(log(10) / LN2) / log(tenth / half);
}

/** How strong a lamp is by the cosine of the angle off its axis, 0..1 of the peak. */
export type BeamCurve = (cosine: number) => number;

/** {@link beamShare} of one lamp, for whoever asks many times. */
export function beamCurve({
  beamDegrees,
  fieldDegrees,
}: Pick<Beam, 'beamDegrees' | 'fieldDegrees'>): BeamCurve {
  if (isAllRound({ beamDegrees })) return () => 1;
  const half = edgeOf(beamDegrees);
  const power = beamPower(beamDegrees, fieldDegrees);
  const onlyAhead = lightsOnlyAhead({ fieldDegrees });
  return (cosine) => {
    if (onlyAhead && cosine <= 0) return 0;
    const doublings = pow(Math.max(0, 1 - cosine) / half, power);
    return doublings > 60 ? 0 : exp(-LN2 * doublings);
  };
}

/**
 * How strong a lamp is off its axis, 0..1 of the peak: a half at half the beam angle, a tenth at half the field angle
 * (full angles, degrees), as head classes are published. Between and beyond by 2^−u^p, u = (1 − cos θ) ÷ (1 − cos of
 * half the beam angle), the power p chosen so that both hold; our own choice of curve, for lack of the lamp's own.
 * Nothing goes behind a face whose field ends before a right angle; a beam of 360° is even all round. The picture and
 * the levels both use it.
 */
export const beamShare = (beamDegrees: number, fieldDegrees: number, cosine: number): number =>
  beamCurve({ beamDegrees, fieldDegrees })(cosine);

/**
 * Lumens of a light that is the same all round its axis: Φ = 2π ∫ I(θ) sin θ dθ, as zones of a quarter degree, each
 * with the candela of its middle and its exact solid angle.
 */
export function lumensOf(candelaAt: (degreesOffAxis: number) => number): number {
  let lumens = 0;
  for (let zone = 0; zone < FLUX_STEPS; zone += 1) {
    const [from, to] = [(zone / FLUX_STEPS) * Math.PI, ((zone + 1) / FLUX_STEPS) * Math.PI];
    lumens += candelaAt((((from + to) / 2) * 180) / Math.PI) * 2 * Math.PI * (cos(from) - cos(to));
  }
  return lumens;
}

/** Lumens of a lamp with these angles, by {@link beamShare}; 4π times the peak where it is even all round. */
export function fluxLumens(beam: Beam): number {
  const curve = beamCurve(beam);
  return isAllRound(beam)
    ? 4 * Math.PI * beam.peakCandela
    : beam.peakCandela * lumensOf((degrees) => curve(cos((degrees * Math.PI) / 180)));
}

/** Full angles at which the cosine is a half and a tenth: what a diffuse area is published with. */
export const DIFFUSE_ANGLES = {
  beamDegrees: 120,
  fieldDegrees: (2 * acos(0.1) * 180) / Math.PI,
} as const;
