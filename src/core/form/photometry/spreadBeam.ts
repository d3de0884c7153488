import type { Distribution } from '../../plan/schema/distribution';
import { cos, log, pow } from '../../units/steadyMath';
import { beamCurve, fluxLumens, isAllRound, lightsOnlyAhead } from '../beam';
import { candelaTable, meansRound, slotOf } from './candelaTable';
import type { LampBeam } from './ownBeam';

/** Zones of a quarter degree to sum over, and half degrees to give the answer at, as finely as a table may be. */
const ZONES = 720;
const ANGLES = 361;
/** A spread under this is finer than the answer, and leaves the beam. */
const LEAST_DEGREES = 2;
/** Terms of the sums: enough for the finest spread and for the kink of the widest. */
const FEWEST_TERMS = 64;
const MOST_TERMS = 300;

const radians = (degrees: number): number => (degrees * Math.PI) / 180;
const ANGLES_DEGREES = Array.from({ length: ANGLES }, (_, k) => k / 2);

interface Zone {
  readonly degrees: number;
  readonly cosine: number;
  /** 1 − cos from edge to edge: its solid angle ÷ 2π. */
  readonly weight: number;
}

const zones: readonly Zone[] = Array.from({ length: ZONES }, (_, zone) => {
  const degrees = ((zone + 0.5) / ZONES) * 180;
  const [from, to] = [(zone / ZONES) * 180, ((zone + 1) / ZONES) * 180];
  return { degrees, cosine: cos(radians(degrees)), weight: cos(radians(from)) - cos(radians(to)) };
});

/** Every Legendre polynomial at some cosines, from the 0th on: a row for each. */
function polynomials(cosines: readonly number[]): readonly Float64Array[] {
  const rows = Array.from({ length: MOST_TERMS }, () => new Float64Array(cosines.length));
  cosines.forEach((cosine, k) => {
    let [before, value] = [0, 1];
    for (let term = 0; term < MOST_TERMS; term += 1) {
      rows[term][k] = value;
      const next = ((2 * term + 1) * cosine * value - term * before) / (term + 1);
      before = value;
      value = next;
    }
  });
  return rows;
}

/** They are the same for every beam, and made when the first is spread. */
let made: { readonly atZones: readonly Float64Array[]; readonly atAngles: readonly Float64Array[] } | null =
  null;
function madePolynomials() {
  made ??= {
    atZones: polynomials(zones.map(({ cosine }) => cosine)),
    atAngles: polynomials(ANGLES_DEGREES.map((degrees) => cos(radians(degrees)))),
  };
  return made;
}

/** The sum of the products of two rows. */
function product(one: Float64Array, other: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < one.length; k += 1) sum += one[k] * other[k];
  return sum;
}

/** The power of the cosine that is a half at half a full angle: how a ray is spread; 1 for an even diffuser. */
const powerOf = (spreadDegrees: number): number => -Math.LN2 / log(cos(radians(spreadDegrees / 2)));

/** Candela of a beam by degrees off its axis; of a table that differs round it, the mean round it. */
function profileOf(beam: LampBeam): (degrees: number) => number {
  const { distribution, peakCandela } = beam;
  if (!distribution) {
    const curve = beamCurve(beam);
    return (degrees) => peakCandela * curve(cos(radians(degrees)));
  }
  const { verticalDegrees: angles } = distribution;
  const means = meansRound(distribution);
  return (degrees) => {
    if (degrees < angles[0] || degrees > angles[angles.length - 1]) return 0;
    const slot = slotOf(angles, degrees);
    const along = (degrees - angles[slot]) / (angles[slot + 1] - angles[slot]);
    return means[slot] + (means[slot + 1] - means[slot]) * along;
  };
}

/** Candela at each half degree, so that the whole is what the curve's own is but for a factor. */
function spreadCurve(profile: (degrees: number) => number, spreadDegrees: number): Float64Array {
  const power = powerOf(spreadDegrees);
  const terms = Math.min(MOST_TERMS, Math.max(FEWEST_TERMS, Math.ceil(6 * Math.sqrt(power))));
  const { atZones, atAngles } = madePolynomials();
  const beam = Float64Array.from(zones, ({ degrees, weight }) => profile(degrees) * weight);
  const ray = Float64Array.from(zones, ({ cosine, weight }) =>
    cosine > 0 ? pow(cosine, power) * weight : 0,
  );
  const whole = product(ray, atZones[0]);
  const candela = new Float64Array(ANGLES);
  for (let term = 0; term < terms; term += 1) {
    const [zone, angle] = [atZones[term], atAngles[term]];
    const share = ((2 * term + 1) / 2) * product(beam, zone) * (product(ray, zone) / whole);
    for (let k = 0; k < ANGLES; k += 1) candela[k] += share * angle[k];
  }
  return candela.map((value) => Math.max(0, value));
}

/** Whether nothing of a beam goes behind its face. */
const isOnlyAhead = (beam: LampBeam, profile: (degrees: number) => number): boolean =>
  beam.distribution
    ? zones.every(({ degrees }) => degrees < 90 || profile(degrees) < beam.peakCandela / 1000)
    : lightsOnlyAhead(beam);

/**
 * A beam behind a sheet that spreads every ray by a power of the cosine: the beam summed with that spread over the
 * sphere, exactly, term by term. Lumens stay; what would go behind the face of a lamp that lights only ahead goes ahead
 * with the rest. A lamp that is even all round stays so. Of a table that differs round its axis the mean round it is
 * spread. The answer is the same all round, as a table by half degrees.
 *
 * Source: [legendre-sums]
 */
export function spreadBeam(beam: LampBeam, spreadDegrees: number): LampBeam {
  if (spreadDegrees < LEAST_DEGREES || beam.peakCandela === 0) return beam;
  if (!beam.distribution && isAllRound(beam)) return beam;
  const profile = profileOf(beam);
  const spread = spreadCurve(profile, spreadDegrees);
  if (isOnlyAhead(beam, profile))
    ANGLES_DEGREES.forEach((degrees, k) => {
      if (degrees > 90) spread[k] = 0;
    });
  const table = (candela: number[]): Distribution => ({
    verticalDegrees: ANGLES_DEGREES,
    horizontalDegrees: [0],
    candela: [candela],
    source: 'Diffusion before the lamp',
  });
  const lumens = beam.distribution ? candelaTable(beam.distribution).lumens : fluxLumens(beam);
  const factor = lumens / candelaTable(table([...spread])).lumens;
  const distribution = table(Array.from(spread, (candela) => candela * factor));
  const { peakCandela, beamDegrees, fieldDegrees } = candelaTable(distribution);
  return { peakCandela, beamDegrees, fieldDegrees, distribution };
}
