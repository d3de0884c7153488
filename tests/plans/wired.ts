import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, planFrom } from './bare';

/** A place with 60 Hz mains, so 120 V. */
const AT_120 = { ...BARE.place, mainsHertz: 60 };

const HEAD_CLASS = {
  id: 'lamp',
  label: 'Lamp',
  form: 'panel',
  size: [0.4, 0.4, 0.1],
  watts: 350,
  powerFactor: 0.95,
  peakCandela: 5000,
  beamDegrees: 90,
  fieldDegrees: 140,
  kelvin: 5600,
};

const standing = { headingDegrees: 0 };

/** An appliance that draws so many watts. */
export const drawing = (id: string, watts: number, powerFactor = 1, more: object = {}, at = [10, 0, 0]) => ({
  kind: 'appliance',
  id,
  label: id,
  at,
  ...standing,
  size: [0.2, 0.2, 0.2],
  drawn: { watts, powerFactor },
  ...more,
});

/** A generator with one circuit, unless `power` says otherwise. */
export const generator = (id: string, power: object = {}, at = [0, 0, 0]) => ({
  kind: 'generator',
  id,
  label: id,
  at,
  ...standing,
  size: [0.6, 0.5, 0.4],
  power: {
    continuousWatts: 5500,
    peakWatts: 7000,
    volts: 120,
    circuits: [{ amps: 30, sockets: 4 }],
    fuel: 'petrol',
    tankLitres: 19,
    litresPerHour: [1.1, 1.65, 2.25, 2.95],
    ...power,
  },
});

/** A box with circuits on two legs, unless `power` says otherwise. */
export const box = (id: string, power: object = {}, at = [5, 0, 0]) => ({
  kind: 'distro',
  id,
  label: id,
  at,
  ...standing,
  size: [0.4, 0.4, 0.25],
  power: {
    inputAmps: 60,
    circuits: [
      { amps: 20, sockets: 2, legs: [1] },
      { amps: 20, sockets: 2, legs: [2] },
    ],
    ...power,
  },
});

/** A cable from one thing to another that is so long with its slack, 12 AWG unless `more` says otherwise. */
export const cable = (
  id: string,
  from: string | null,
  to: string | null,
  metres = 10,
  more: object = {},
) => ({
  kind: 'cable',
  id,
  label: id,
  path: [
    [0, 0],
    [metres / 1.1, 0],
  ],
  baseMetres: 0,
  diameterMetres: 0.014,
  wire: { awg: 12 },
  ...(from !== null || to !== null
    ? { plugs: { ...(from !== null && { from }), ...(to !== null && { to }) } }
    : {}),
  ...more,
});

/** A head of 350 W on nothing but the deck. */
export const lamp = (id: string, more: object = {}) => ({
  kind: 'head',
  id,
  label: id,
  head: 'lamp',
  place: { at: [4, 0, 4] },
  aim: [0, 1, 0],
  dim: 1,
  ...more,
});

/** A plan of gear alone, at 120 V. */
export const wired = (gear: readonly object[], more: object = {}): Plan =>
  planFrom({
    ...BARE,
    place: AT_120,
    kit: { ...BARE.kit, heads: [HEAD_CLASS] },
    gear: [...gear],
    ...more,
  });
