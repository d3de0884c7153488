import { parsePlan } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';

/** A plan from a plain document, checked as one from a file is; throws with what is wrong in it. */
export function planFrom(document: unknown): Plan {
  const parsed = parsePlan(document);
  if (!parsed.ok) throw new Error(parsed.faults.map(({ sentence }) => sentence).join('\n'));
  return parsed.value;
}

/** The document of a plan with nothing on its dry roof, and one beat. */
export const BARE = {
  standclear: 1,
  title: 'Bare',
  notes: '',
  place: {
    label: 'Nowhere',
    latitudeDegrees: 0,
    longitudeDegrees: 0,
    timeZone: 'UTC',
    date: '2026-11-27',
    northDegrees: 0,
  },
  ground: { surface: 'concrete', wetness: 'dry' },
  safety: { metres: 0.2, frameWidths: 0.02 },
  kit: { bodies: [], lenses: [], heads: [], stands: [] },
  pieces: [],
  beats: [{ id: 'start', label: 'Start', atSeconds: 0 }],
  cast: [],
  gear: [],
  setups: [],
};

/** A camera with a wide gate and a high one, millimetres. */
export const BODY = {
  id: 'body',
  label: 'Body',
  modes: [
    { id: 'wide', label: 'Wide', gateMm: [24.89, 14] },
    { id: 'high', label: 'High', gateMm: [24.89, 18.66] },
  ],
};

/** A spherical lens, unless `more` says otherwise. */
export const lensOf = (id: string, focalMm: number, more: object = {}) => ({
  id,
  label: `${focalMm} mm`,
  focalMm,
  squeeze: 1,
  widestStop: 2,
  narrowestStop: 22,
  closeFocusMetres: 1,
  ...more,
});

/** A setup of one instant, level and along −z from a place on the wide gate of `BODY`, in daylight; `more` says what is otherwise. */
export const stillSetup = (id: string, lens: string, key: object, more: object = {}) => ({
  id,
  label: id,
  body: 'body',
  mode: 'wide',
  lens,
  delivery: 1.78,
  stop: 4,
  iso: 400,
  shutterDegrees: 180,
  framesPerSecond: 24,
  ndStops: 0,
  balanceKelvin: 5600,
  focus: { metres: 4 },
  support: 'sticks',
  span: { from: 'start', to: 'start' },
  move: {
    ease: 'linear',
    keys: [{ atSeconds: 0, headingDegrees: 0, tiltDegrees: 0, rollDegrees: 0, ...key }],
  },
  ...more,
});
