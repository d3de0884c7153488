import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { HeadClass, StandClass } from '../../../../src/core/plan/schema/kit';
import type { Plan } from '../../../../src/core/plan/schema/plan';

/** Classes with round numbers, so that a test can say what comes out. */
export const TALL_STAND: StandClass = {
  id: 'tall',
  label: 'Tall stand',
  lowestMetres: 1.6,
  highestMetres: 4,
  footprintMetres: 1.2,
  sections: 4,
  baseTubeMetres: 0.035,
  tubeStepMetres: 0.005,
  legTubeMetres: 0.025,
  collarMetres: 0.9,
};
export const LOW_STAND: StandClass = {
  ...TALL_STAND,
  id: 'low',
  collarMetres: 0.2,
  sections: 2,
  lowestMetres: 0.7,
};

const headClass = (form: HeadClass['form'], size: HeadClass['size']): HeadClass => ({
  id: form,
  label: `A ${form}`,
  form,
  size,
  watts: 300,
  powerFactor: 0.95,
  peakCandela: 20000,
  beamDegrees: 40,
  fieldDegrees: 60,
  kelvin: 5600,
});

export const HEADS: readonly HeadClass[] = [
  headClass('spot', [0.2, 0.2, 0.36]),
  headClass('fresnel', [0.3, 0.32, 0.4]),
  headClass('panel', [0.6, 0.3, 0.1]),
  headClass('tube', [1.2, 0.04, 0.04]),
  { ...headClass('bulb', [0.06, 0.11, 0.06]), beamDegrees: 360, fieldDegrees: 360 },
  headClass('bulkhead', [0.24, 0.24, 0.14]),
  headClass('sign', [3, 0.6, 0.18]),
  headClass('street', [0.3, 6, 1.4]),
];

/** A plan that holds only gear and the classes above. */
export function planOf(gear: readonly Gear[]): Plan {
  return {
    standclear: 1,
    title: 'Gear',
    notes: '',
    place: {
      label: 'Roof',
      latitudeDegrees: 0,
      longitudeDegrees: 0,
      timeZone: 'UTC',
      date: '2026-11-20',
      northDegrees: 0,
    },
    ground: { surface: 'concrete', wetness: 'dry' },
    safety: { metres: 0.2, frameWidths: 0.02 },
    kit: { bodies: [], lenses: [], heads: [...HEADS], stands: [TALL_STAND, LOW_STAND] },
    pieces: [],
    beats: [],
    cast: [],
    gear: [...gear],
    setups: [],
  };
}

export const STAND: Extract<Gear, { kind: 'stand' }> = {
  kind: 'stand',
  id: 'stand-1',
  label: 'Lamp stand 1',
  stand: 'tall',
  at: [2, 0.5, -3],
  headingDegrees: 30,
  heightMetres: 3.2,
};

export const ARM_STAND: Extract<Gear, { kind: 'stand' }> = {
  ...STAND,
  id: 'stand-2',
  label: 'Flag stand',
  stand: 'low',
  at: [-1, 0, 1],
  heightMetres: 1.5,
  arm: { lengthMetres: 1, tiltDegrees: 20, headingDegrees: 90 },
};

export const HEAD: Extract<Gear, { kind: 'head' }> = {
  kind: 'head',
  id: 'head-1',
  label: 'Head 1',
  head: 'spot',
  place: { on: 'stand-1' },
  aim: [0, 1.6, 2],
  dim: 1,
};

export const FLAG: Extract<Gear, { kind: 'flag' }> = {
  kind: 'flag',
  id: 'flag-1',
  label: 'Flag 1',
  place: { at: [0, 2, 0] },
  headingDegrees: 45,
  tiltDegrees: 10,
  size: [1.2, 0.9],
};

const standing = { at: [1, 0.2, -2] as [number, number, number], headingDegrees: 70 };

/** One of each kind, and of each form, modifier and way of being carried. */
export const EVERY_KIND: readonly Gear[] = [
  STAND,
  ARM_STAND,
  { ...STAND, id: 'stand-3', heightMetres: 0.4 },
  { ...STAND, id: 'stand-4', heightMetres: 6 },
  { ...STAND, id: 'stand-6', spreadMetres: 0.6 },
  { ...STAND, id: 'stand-7', spreadMetres: 0.15, heightMetres: 1.7 },
  { ...STAND, id: 'stand-8', spreadMetres: 4, bags: { count: 2, kilograms: 7 } },
  { ...ARM_STAND, id: 'stand-9', spreadMetres: 0.5, bags: { count: 1, kilograms: 12 } },
  { ...ARM_STAND, id: 'stand-10', arm: { lengthMetres: 1, tiltDegrees: -70, headingDegrees: 20 } },
  { ...STAND, id: 'stand-5', arm: { lengthMetres: 1, tiltDegrees: -10, headingDegrees: 200 } },
  ...HEADS.map(({ form }): Gear => ({ ...HEAD, id: `head-${form}`, label: `Head ${form}`, head: form })),
  ...(['softbox', 'lantern', 'grid', 'barn doors', 'snoot'] as const).flatMap((modifier): Gear[] => [
    { ...HEAD, id: `spot-${modifier}`, label: `Spot, ${modifier}`, modifier },
    { ...HEAD, id: `panel-${modifier}`, label: `Panel, ${modifier}`, head: 'panel', modifier },
  ]),
  { ...HEAD, id: 'spot-yoke', label: 'Spot, long yoke', yokeMetres: 0.6 },
  { ...HEAD, id: 'spot-hanging', label: 'Spot, hanging', place: { on: 'stand-10' } },
  FLAG,
  { ...FLAG, id: 'flag-2', place: { on: 'stand-1' } },
  { ...FLAG, id: 'flag-3', place: { on: 'stand-2' } },
  { ...FLAG, kind: 'frame', id: 'frame-1', size: [2.4, 2.4], transmission: 0.5 },
  { ...FLAG, kind: 'bounce', id: 'bounce-1', place: { on: 'stand-2' }, reflectance: 0.7 },
  { ...FLAG, kind: 'bounce', id: 'bounce-2', reflectance: 0.9 },
  ...HEADS.map(
    ({ form }): Gear => ({
      kind: 'practical',
      id: `practical-${form}`,
      label: `Practical ${form}`,
      ...standing,
      head: form,
      dim: 1,
      tint: '#3a7bff',
    }),
  ),
  {
    kind: 'bulb string',
    id: 'string-1',
    label: 'Bulbs',
    head: 'bulb',
    from: [-4, 3, -2],
    to: [4, 2.5, 2],
    sagMetres: 0.6,
    bulbs: 12,
    dim: 0.5,
  },
  { kind: 'generator', id: 'generator-1', label: 'Generator', ...standing, size: [0.6, 0.5, 0.45] },
  { kind: 'distro', id: 'distro-1', label: 'Distro', ...standing, size: [0.4, 0.35, 0.25] },
  { kind: 'outlet', id: 'outlet-1', label: 'Outlet', ...standing, size: [0.16, 0.32, 0.1] },
  { kind: 'battery', id: 'battery-1', label: 'Battery', ...standing, size: [0.45, 0.3, 0.28] },
  {
    kind: 'appliance',
    id: 'appliance-1',
    label: 'Kettle',
    ...standing,
    size: [0.2, 0.26, 0.2],
    drawn: { watts: 1500, powerFactor: 1 },
  },
  {
    kind: 'cable',
    id: 'cable-1',
    label: 'Cable',
    path: [
      [0, 0],
      [3, 0],
      [3, 2],
      [3, 2],
      [3.2, -1],
    ],
    baseMetres: 0,
    diameterMetres: 0.012,
  },
  { kind: 'track', id: 'track-1', label: 'Track', ...standing, lengthMetres: 5.4, gaugeMetres: 0.62 },
  {
    kind: 'track',
    id: 'track-2',
    label: 'Track to the right',
    ...standing,
    lengthMetres: 6,
    gaugeMetres: 0.62,
    bendMetres: 4,
  },
  {
    kind: 'track',
    id: 'track-3',
    label: 'Tight track to the left',
    ...standing,
    lengthMetres: 3,
    gaugeMetres: 1.2,
    bendMetres: -0.5,
  },
  { kind: 'dolly', id: 'dolly-1', label: 'Dolly', ...standing, size: [0.66, 1.05, 1.2] },
  { kind: 'cart', id: 'cart-1', label: 'Cart', ...standing, size: [1.1, 0.95, 0.6], monitors: 2 },
  {
    kind: 'monitor',
    id: 'monitor-1',
    label: 'Monitor',
    place: { at: [0, 1, 0] },
    headingDegrees: 20,
    diagonalMetres: 0.6,
  },
  {
    kind: 'monitor',
    id: 'monitor-2',
    label: 'Monitor on a stand',
    place: { on: 'stand-1' },
    headingDegrees: 20,
    diagonalMetres: 0.43,
  },
  { kind: 'ladder', id: 'ladder-1', label: 'Ladder', ...standing, heightMetres: 2.4 },
  { kind: 'sandbag', id: 'sandbag-1', label: 'Sandbag', ...standing, kilograms: 10 },
];
