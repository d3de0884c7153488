import type { Plan } from '../core/plan/schema/plan';
import { PLAN_VERSION } from '../core/plan/schema/version';

/** A plan with nothing in it yet: what the page holds until one is opened. */
export const EMPTY_PLAN: Plan = {
  standclear: PLAN_VERSION,
  title: 'New plan',
  notes: '',
  place: {
    label: 'no place yet',
    latitudeDegrees: 0,
    longitudeDegrees: 0,
    timeZone: 'UTC',
    date: new Date().toISOString().slice(0, 10),
    northDegrees: 0,
  },
  ground: { surface: 'concrete', wetness: 'dry' },
  safety: { metres: 0.3, frameWidths: 0.02 },
  kit: { bodies: [], lenses: [], heads: [], stands: [] },
  pieces: [],
  beats: [],
  cast: [],
  gear: [],
  setups: [],
};
