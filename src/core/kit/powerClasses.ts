import type { BatteryPower, Circuit, DistroPower, GeneratorPower, HousePower } from '../plan/schema/power';
import { log } from '../units/steadyMath';

/** What the mains of a place give, from a line to the neutral. */
export type MainsVolts = 120 | 230;
type Size = readonly [width: number, height: number, depth: number];

interface PowerClass<Power> {
  readonly id: string;
  readonly word: string;
  /** [width, height, depth], metres. */
  readonly size: Size;
  readonly power: Readonly<Record<MainsVolts, Power>>;
  readonly source: string;
}

type Circuits = Readonly<Record<MainsVolts, Circuit[]>>;

/** A class that is the same at both mains but for its volts and its circuits. */
const classWith = <Core extends object>(word: string, size: Size, core: Core, circuits: Circuits) => ({
  id: word.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-'),
  word,
  size,
  power: {
    120: { ...core, volts: 120, circuits: circuits[120] },
    230: { ...core, volts: 230, circuits: circuits[230] },
  },
  source: 'generator-classes',
});

const generator = (
  word: string,
  size: Size,
  core: Omit<GeneratorPower, 'volts' | 'circuits'>,
  circuits: Circuits,
): PowerClass<GeneratorPower> => classWith(word, size, core, circuits);

/** Generators by their size, smallest first. */
export const GENERATOR_CLASSES: readonly PowerClass<GeneratorPower>[] = [
  generator(
    'Generator, 1\u00a0kW',
    [0.45, 0.38, 0.24],
    {
      continuousWatts: 900,
      peakWatts: 1000,
      fuel: 'petrol',
      tankLitres: 2.1,
      litresPerHour: [0.3, 0.4, 0.52, 0.65],
    },
    { 120: [{ amps: 15, sockets: 2 }], 230: [{ amps: 6, sockets: 1 }] },
  ),
  generator(
    'Generator, 2\u00a0kW',
    [0.51, 0.43, 0.29],
    {
      continuousWatts: 1600,
      peakWatts: 2000,
      fuel: 'petrol',
      tankLitres: 3.6,
      litresPerHour: [0.45, 0.65, 0.87, 1.1],
    },
    { 120: [{ amps: 20, sockets: 2 }], 230: [{ amps: 10, sockets: 2 }] },
  ),
  generator(
    'Generator, 3\u00a0kW',
    [0.66, 0.56, 0.45],
    {
      continuousWatts: 2800,
      peakWatts: 3000,
      fuel: 'petrol',
      tankLitres: 13,
      litresPerHour: [0.65, 1, 1.4, 1.85],
    },
    {
      120: [
        { amps: 20, sockets: 2 },
        { amps: 30, sockets: 1 },
      ],
      230: [
        { amps: 16, sockets: 1 },
        { amps: 16, sockets: 1 },
      ],
    },
  ),
  generator(
    'Generator, 7\u00a0kW',
    [0.85, 0.7, 0.72],
    {
      continuousWatts: 5500,
      peakWatts: 7000,
      fuel: 'petrol',
      tankLitres: 19,
      litresPerHour: [1.1, 1.65, 2.25, 2.95],
    },
    {
      120: [
        { amps: 20, sockets: 2, legs: [1] },
        { amps: 20, sockets: 2, legs: [2] },
        { amps: 30, sockets: 1, legs: [1, 2] },
      ],
      230: [
        { amps: 16, sockets: 1 },
        { amps: 16, sockets: 1 },
        { amps: 32, sockets: 1 },
      ],
    },
  ),
];

const battery = (
  word: string,
  size: Size,
  core: Omit<BatteryPower, 'volts' | 'circuits'>,
  amps: Readonly<Record<MainsVolts, number>>,
): PowerClass<BatteryPower> =>
  classWith(word, size, core, {
    120: [{ amps: amps[120], sockets: 3 }],
    230: [{ amps: amps[230], sockets: 2 }],
  });

/** Batteries with an inverter by their size, smallest first. */
export const BATTERY_CLASSES: readonly PowerClass<BatteryPower>[] = [
  battery(
    'Battery, 1\u00a0kWh',
    [0.33, 0.25, 0.23],
    { wattHours: 1000, continuousWatts: 1000, peakWatts: 2000 },
    { 120: 15, 230: 6 },
  ),
  battery(
    'Battery, 2\u00a0kWh',
    [0.45, 0.3, 0.28],
    { wattHours: 2000, continuousWatts: 2000, peakWatts: 4000 },
    { 120: 20, 230: 10 },
  ),
];

/** What inverter and cells leave of a battery's watt-hours. Source: common practice, no source */
export const BATTERY_YIELD = 0.85;

/** Sockets of a house: one circuit with a double socket. Source: common practice, no source */
export const HOUSE_CIRCUIT: Readonly<Record<MainsVolts, HousePower>> = {
  120: { volts: 120, circuits: [{ amps: 15, sockets: 2 }] },
  230: { volts: 230, circuits: [{ amps: 16, sockets: 2 }] },
};

const six = (amps: number, legs: (place: number) => number): Circuit[] =>
  Array.from({ length: 6 }, (_, place): Circuit => ({ amps, sockets: 1, legs: [legs(place)] }));

/** A box with six circuits, each behind a breaker. Source: common practice, no source */
export const DISTRO: Readonly<Record<MainsVolts, DistroPower>> = {
  120: { inputAmps: 60, circuits: six(20, (place) => 1 + (place % 2)) },
  230: { inputAmps: 32, circuits: six(16, () => 1) },
};

/** The class whose case is nearest in volume to a size, as how many times one is the other. */
export function classOfSize<Power>(classes: readonly PowerClass<Power>[], size: Size): PowerClass<Power> {
  const volume = ([width, height, depth]: Size): number => log(width * height * depth);
  return classes.reduce((nearest, each) =>
    Math.abs(volume(each.size) - volume(size)) < Math.abs(volume(nearest.size) - volume(size))
      ? each
      : nearest,
  );
}
