import { addProbe } from '../../plan/edits/addProbe';
import { DOLLY_SIZE } from '../../plan/edits/setRides';
import { kept, tidyHeading, tidyMetres } from '../../plan/edits/tidy';
import { bearingOf, metresBetween, spotFrom } from '../../plan/runs';
import type { Spot } from '../../plan/schema/numbers';
import { asin, cos } from '../../units/steadyMath';
import { BATTERY_CLASSES, GENERATOR_CLASSES } from '../powerClasses';
import type { Making, MakingEntry, NewItem } from './entry';
import { carriedItems } from './grip';
import { baseOf, endsOf, onSurface, STANDING_FACE_METRES } from './heights';

const power = { section: 'gear', group: 'Power' } as const;
const camera = { section: 'gear', group: 'Camera' } as const;

/** Tightest common bend of curved track, metres. Source: common practice, no source */
const BEND_METRES = 4;
const GAUGE_METRES = 0.62;
const LONGEST_METRES = 500;

type Gear = Extract<NewItem, { readonly section: 'gear' }>;

const gearOf = (stem: string, record: Gear['record']): readonly NewItem[] => [
  { section: 'gear', stem, record },
];

const cable = (id: string, word: string, diameterMetres: number, also: readonly string[]): MakingEntry => ({
  ...power,
  id,
  word,
  kind: 'cable',
  how: 'run',
  icon: 'cable',
  also,
  make: ({ plan, spots }) =>
    spots.length < 2
      ? null
      : gearOf(word, { kind: 'cable', path: [...spots], baseMetres: baseOf(plan, spots), diameterMetres }),
});

/** Track from one end to the other. A bent one is an arc over the two, which bends to the right on its way. */
function track(making: Making, bent: boolean): Gear['record'] {
  const [from, to] = endsOf(making);
  const chord = kept(tidyMetres(metresBetween(from, to)), 0.001, LONGEST_METRES / 2);
  const headingDegrees = tidyHeading(bearingOf(from, to));
  const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  if (!bent)
    return {
      kind: 'track',
      at: onSurface(making.plan, middle),
      headingDegrees,
      lengthMetres: chord,
      gaugeMetres: GAUGE_METRES,
    };
  const bendMetres = tidyMetres(Math.max(BEND_METRES, chord * 0.75));
  const half = asin(chord / 2 / bendMetres);
  return {
    kind: 'track',
    // The arc bulges to the left, away from the middle that it bends around.
    at: onSurface(making.plan, spotFrom(middle, headingDegrees - 90, bendMetres * (1 - cos(half)))),
    headingDegrees,
    lengthMetres: tidyMetres(2 * bendMetres * half),
    gaugeMetres: GAUGE_METRES,
    bendMetres,
  };
}

/** A thing in a case, put at one place. */
const cased = (
  kind: 'generator' | 'battery' | 'outlet',
  id: string,
  word: string,
  size: readonly [number, number, number],
  also: readonly string[],
): MakingEntry => ({
  ...power,
  id,
  word,
  kind,
  how: 'spot',
  icon: kind === 'battery' ? 'battery-box' : kind,
  also,
  make: ({ plan, spots, headingDegrees }) =>
    gearOf(word, { kind, at: onSurface(plan, spots[0]), headingDegrees, size: [...size] }),
});

const appliance = (
  id: string,
  word: string,
  size: readonly [number, number, number],
  drawn: { readonly watts: number; readonly powerFactor: number; readonly startTimes?: number },
  also: readonly string[],
): MakingEntry => ({
  ...power,
  id,
  word,
  kind: 'appliance',
  how: 'spot',
  icon: 'appliance',
  also,
  make: ({ plan, spots, headingDegrees }) =>
    gearOf(word, {
      kind: 'appliance',
      at: onSurface(plan, spots[0]),
      headingDegrees,
      size: [...size],
      drawn: { ...drawn },
    }),
});

/** Power and cable, by common sizes and what such things commonly draw. Source: common practice, no source */
export const POWER_ENTRIES: readonly MakingEntry[] = [
  {
    ...power,
    id: 'generator',
    word: 'Generator',
    kind: 'generator',
    how: 'spot',
    icon: 'generator',
    also: ['genny', 'power', 'inverter'],
    make: ({ plan, spots, headingDegrees }) =>
      gearOf('Generator', {
        kind: 'generator',
        at: onSurface(plan, spots[0]),
        headingDegrees,
        size: [0.56, 0.48, 0.42],
      }),
  },
  ...GENERATOR_CLASSES.map(({ id, word, size }) =>
    cased('generator', id, word, size, ['genny', 'power', 'inverter', 'petrol']),
  ),
  ...BATTERY_CLASSES.map(({ id, word, size }) =>
    cased('battery', id, word, size, ['power station', 'inverter', 'watt-hours']),
  ),
  cased('outlet', 'outlet', 'House outlet', [0.16, 0.32, 0.1], ['socket', 'mains', 'wall', 'house power']),
  {
    ...power,
    id: 'distro',
    word: 'Distro',
    kind: 'distro',
    how: 'spot',
    icon: 'distro',
    also: ['distribution', 'power', 'box', 'lunch box'],
    make: ({ plan, spots, headingDegrees }) =>
      gearOf('Distro', {
        kind: 'distro',
        at: onSurface(plan, spots[0]),
        headingDegrees,
        size: [0.4, 0.45, 0.25],
      }),
  },
  cable('cable', 'Cable', 0.014, ['lead', 'extension', 'power', 'run']),
  cable('feeder-cable', 'Feeder cable', 0.026, ['heavy', 'main', 'power', 'run']),
  appliance('charger', 'Charger', [0.3, 0.2, 0.2], { watts: 300, powerFactor: 0.6 }, ['batteries', 'load']),
  appliance('computer', 'Computer', [0.36, 0.25, 0.26], { watts: 90, powerFactor: 0.9 }, ['laptop', 'load']),
  appliance('kettle', 'Kettle', [0.2, 0.26, 0.2], { watts: 1500, powerFactor: 1 }, ['coffee', 'urn', 'load']),
  appliance('fan', 'Fan', [0.5, 0.6, 0.3], { watts: 250, powerFactor: 0.8, startTimes: 3 }, [
    'wind',
    'smoke',
    'motor',
    'load',
  ]),
];

/** Dolly track, monitors and the cart, by common sizes. Source: common practice, no source */
export const CAMERA_ENTRIES: readonly MakingEntry[] = [
  {
    ...camera,
    id: 'track',
    word: 'Dolly track',
    kind: 'track',
    how: 'ends',
    icon: 'track',
    also: ['rails', 'straight', 'dolly'],
    make: (making) => gearOf('Dolly track', track(making, false)),
  },
  {
    ...camera,
    id: 'curved-track',
    word: 'Curved track',
    kind: 'track',
    how: 'ends',
    icon: 'track',
    also: ['rails', 'bend', 'dolly', 'circle'],
    make: (making) => gearOf('Curved track', track(making, true)),
  },
  {
    ...camera,
    id: 'dolly',
    word: 'Dolly',
    kind: 'dolly',
    how: 'spot',
    icon: 'dolly',
    also: ['camera carriage', 'wheels', 'track', 'ride'],
    make: ({ plan, spots, headingDegrees }) =>
      gearOf('Dolly', {
        kind: 'dolly',
        at: onSurface(plan, spots[0]),
        headingDegrees,
        size: [...DOLLY_SIZE],
      }),
  },
  {
    ...camera,
    id: 'meter',
    word: 'Meter here',
    kind: 'meter',
    how: 'spot',
    icon: 'meter',
    also: ['light meter', 'probe', 'reading', 'lux', 'footcandles', 'incident'],
    cut: ({ plan, spots }) => {
      const [x, floor, z] = onSurface(plan, spots[0]);
      const metered = addProbe(plan, { at: [x, floor + STANDING_FACE_METRES, z] });
      const probe = metered === plan ? undefined : metered.probes?.at(-1);
      return probe ? { plan: metered, id: probe.id } : null;
    },
  },
  {
    ...camera,
    id: 'cart',
    word: 'Monitor cart',
    kind: 'cart',
    how: 'spot',
    icon: 'cart',
    also: ['video village', 'trolley', 'playback'],
    make: ({ plan, spots, headingDegrees }) =>
      gearOf('Monitor cart', {
        kind: 'cart',
        at: onSurface(plan, spots[0]),
        headingDegrees,
        size: [0.9, 1.05, 0.55],
        monitors: 2,
      }),
  },
  {
    ...camera,
    id: 'monitor',
    word: 'Monitor',
    kind: 'monitor',
    how: 'spot',
    icon: 'monitor',
    also: ['screen', 'director', 'video'],
    make: (making) =>
      carriedItems(
        making,
        { classId: 'light-stand', stem: 'Monitor stand', heightMetres: 1.3 },
        {
          stem: 'Monitor',
          record: {
            kind: 'monitor',
            place: { at: onSurface(making.plan, making.spots[0]) },
            headingDegrees: making.headingDegrees,
            diagonalMetres: 0.43,
          },
        },
      ),
  },
];
