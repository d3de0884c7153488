import type { Wire } from '../plan/schema/power';
import { pow } from '../units/steadyMath';
import type { MainsVolts } from './powerClasses';

/** A cord of lines, a neutral and an earth, all of one size. */
export interface CordSize {
  readonly wire: Wire;
  /** Of one conductor at `CORD_CELSIUS`, ohms. */
  readonly ohmsPerMetre: number;
  /** What it carries laid out in free air, amps. */
  readonly amps: number;
  /** Over the sheath with three conductors, metres. */
  readonly diameterMetres: number;
}

/** What conductors of cords are reckoned at: that of the table. Cold, a meter finds some 82 % of it. */
const CORD_CELSIUS = 75;

const FEET_PER_METRE = 1 / 0.3048;

/** How much more copper resists than at 20 °C. Source: [copper-temperature] */
export const copperFactor = (celsius: number): number => 1 + 0.00393 * (celsius - 20);

/** Diameter of a bare solid wire, millimetres. Source: [wire-gauge] */
export const awgDiameterMm = (awg: number): number => 0.127 * pow(92, (36 - awg) / 39);

/** Copper of a wire of a gauge, mm². Source: [wire-gauge] */
export function awgAreaMm2(awg: number): number {
  const diameter = awgDiameterMm(awg);
  return (Math.PI / 4) * diameter * diameter;
}

const gauge = (
  awg: Extract<Wire, { readonly awg: number }>['awg'],
  ohmsPerThousandFeet: number,
  amps: number,
  diameterMetres: number,
): CordSize => ({
  wire: { awg },
  ohmsPerMetre: (ohmsPerThousandFeet / 1000) * FEET_PER_METRE,
  amps,
  diameterMetres,
});

const square = (
  mm2: Extract<Wire, { readonly mm2: number }>['mm2'],
  ohmsPerKilometre: number,
  amps: number,
  diameterMetres: number,
): CordSize => ({
  wire: { mm2 },
  ohmsPerMetre: (ohmsPerKilometre / 1000) * copperFactor(CORD_CELSIUS),
  amps,
  diameterMetres,
});

/**
 * Cords by gauge, thinnest first; their diameters are those of common rubber cords, from memory.
 * Source: [conductor-properties], [conductor-properties-rest], [cord-ampacity], [cord-ampacity-rest]
 */
export const AWG_CORDS: readonly CordSize[] = [
  gauge(18, 7.95, 10, 0.0078),
  gauge(16, 4.99, 13, 0.0085),
  gauge(14, 3.14, 18, 0.0105),
  gauge(12, 1.98, 25, 0.014),
  gauge(10, 1.24, 30, 0.0165),
  gauge(8, 0.778, 40, 0.0205),
  gauge(6, 0.491, 55, 0.026),
  gauge(4, 0.308, 70, 0.03),
  gauge(2, 0.194, 95, 0.035),
];

/**
 * Cords by mm², thinnest first; their diameters are those of common rubber cords, from memory.
 * Source: [flexible-conductors], [copper-temperature], [cord-ampacity-rest]
 */
export const MM2_CORDS: readonly CordSize[] = [
  square(1, 19.5, 15, 0.009),
  square(1.5, 13.3, 18, 0.0105),
  square(2.5, 7.98, 26, 0.014),
  square(4, 4.95, 34, 0.0155),
  square(6, 3.3, 44, 0.018),
  square(10, 1.91, 61, 0.026),
  square(16, 1.21, 82, 0.029),
  square(25, 0.78, 108, 0.035),
];

/** Of a drum that is wound up what is left of its amps. Source: common practice, no source */
export const COILED_FACTOR = 0.4;

/** The cords of a world of 120 or 230 volts, thinnest first. */
export const cordsOf = (mainsVolts: MainsVolts): readonly CordSize[] =>
  mainsVolts === 120 ? AWG_CORDS : MM2_CORDS;

/** The cord of a size; each that a plan may name is in one of the tables. */
export function cordOf(wire: Wire): CordSize {
  const found = [...AWG_CORDS, ...MM2_CORDS].find((cord) =>
    'awg' in wire
      ? 'awg' in cord.wire && cord.wire.awg === wire.awg
      : 'mm2' in cord.wire && cord.wire.mm2 === wire.mm2,
  );
  if (!found) throw new Error(`A cord of ${JSON.stringify(wire)}: expected one of the tables`);
  return found;
}

/** The cord whose sheath comes nearest to a diameter, in a world of 120 or 230 volts. */
export const cordOfDiameter = (diameterMetres: number, mainsVolts: MainsVolts): CordSize =>
  cordsOf(mainsVolts).reduce((nearest, cord) =>
    Math.abs(cord.diameterMetres - diameterMetres) < Math.abs(nearest.diameterMetres - diameterMetres)
      ? cord
      : nearest,
  );
