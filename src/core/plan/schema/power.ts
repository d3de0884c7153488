import * as v from 'valibot';
import { wholeCount, within } from './numbers';
import { anyOf } from './texts';

/** Sizes of conductors that a cord may have, American wire gauge, thinnest first. */
const AWG_SIZES = [18, 16, 14, 12, 10, 8, 6, 4, 2] as const;
/** The same in mm². */
const MM2_SIZES = [1, 1.5, 2.5, 4, 6, 10, 16, 25] as const;

const watts = within(1, 500000, 'watts');
const volts = within(50, 500, 'volts, from a line to the neutral');
const amps = within(1, 400, 'amps');

/** A breaker with the sockets behind it. */
const circuit = v.strictObject({
  /** What the breaker is rated for. */
  amps,
  sockets: wholeCount(1, 24),
  /** The lines of its supply that it carries; the first alone where it is left out. */
  legs: v.optional(
    v.pipe(
      v.array(wholeCount(1, 3)),
      v.minLength(1, 'at least one leg'),
      v.maxLength(3, 'at most three legs'),
      v.check((legs) => new Set(legs).size === legs.length, 'each leg once'),
    ),
  ),
});
/** What a supply or a box may have of them. */
export const MOST_CIRCUITS = 24;
const circuits = v.pipe(
  v.array(circuit),
  v.minLength(1, 'at least one circuit'),
  v.maxLength(MOST_CIRCUITS, `at most ${MOST_CIRCUITS} circuits`),
);

const litresPerHour = within(0, 500, 'litres an hour');

/** What stands on a generator's plate. */
export const generatorPower = v.strictObject({
  /** What it gives for as long as it has fuel. */
  continuousWatts: watts,
  /** What it gives for moments, as when a motor starts. */
  peakWatts: watts,
  volts,
  circuits,
  fuel: v.picklist(['petrol', 'diesel'], 'petrol or diesel'),
  tankLitres: within(0.1, 2000, 'litres'),
  /** What it burns at a quarter, a half, three quarters of its continuous watts, and at all of them. */
  litresPerHour: v.strictTuple(
    [litresPerHour, litresPerHour, litresPerHour, litresPerHour],
    'four numbers of litres an hour',
  ),
});

/** Sockets of the house: a circuit of it, or several. */
export const housePower = v.strictObject({ volts, circuits });

/** A battery with its inverter. */
export const batteryPower = v.strictObject({
  wattHours: within(1, 1e6, 'watt-hours'),
  continuousWatts: watts,
  peakWatts: watts,
  volts,
  circuits,
});

/** A box that divides a supply. Its legs are those of the circuit that feeds it, in their order. */
export const distroPower = v.strictObject({
  /** What its inlet is rated for on each leg. */
  inputAmps: amps,
  circuits,
});

/** What a thing draws. */
export const drawn = v.strictObject({
  watts: within(0, 500000, 'watts'),
  powerFactor: within(0.1, 1, ''),
  /** How many times its watts it takes for a moment when it starts; 1 where left out. */
  startTimes: v.optional(within(1, 10, 'times')),
});

/** Where something takes its power from: a cord that is drawn on the plan, or a battery or socket of its own. */
export const supply = v.picklist(['cord', 'own'], 'cord or own');

/** The copper of a cord's lines and neutral. */
export const wire = v.union(
  [
    v.strictObject({ awg: v.picklist(AWG_SIZES, `${anyOf(AWG_SIZES)} AWG`) }),
    v.strictObject({ mm2: v.picklist(MM2_SIZES, `${anyOf(MM2_SIZES)} mm²`) }),
  ],
  'either {"awg": 12} or {"mm2": 2.5}',
);

/** How long everything may be on, least and most, hours. */
export const ON_HOURS = [0.1, 48] as const;

/** What the whole plan says of its power. */
export const planPower = v.strictObject({
  /** Of the mains; left out, as the place makes likely. */
  volts: v.optional(v.picklist([120, 230], '120 or 230 volts')),
  /** How long everything is on; left out, from call to wrap, else from dusk to dawn; see core/power/nightHours. */
  hours: v.optional(within(...ON_HOURS, 'hours')),
});

export type Circuit = v.InferOutput<typeof circuit>;
export type GeneratorPower = v.InferOutput<typeof generatorPower>;
export type HousePower = v.InferOutput<typeof housePower>;
export type BatteryPower = v.InferOutput<typeof batteryPower>;
export type DistroPower = v.InferOutput<typeof distroPower>;
export type Drawn = v.InferOutput<typeof drawn>;
export type Supply = v.InferOutput<typeof supply>;
export type Wire = v.InferOutput<typeof wire>;
export type PlanPower = v.InferOutput<typeof planPower>;
