import * as v from 'valibot';
import { point, within } from './numbers';
import { id, label } from './texts';

/** What the numbers about cautions may be, lowest and highest, in the unit of each name. */
export const CAUTION_LIMITS = {
  windMetresPerSecond: [0, 60],
  gustMetresPerSecond: [0, 90],
  areaLoad: [0, 100],
  pointLoad: [0, 1000],
  wayOutMetres: [0.4, 5],
  noteCharacters: 400,
  keyCharacters: 4000,
} as const;

/** The wind that is forecast for the night, as the user has read it; see core/cautions/wind. */
const wind = v.strictObject({
  /** The mean, metres a second. */
  metresPerSecond: within(...CAUTION_LIMITS.windMetresPerSecond, 'm/s'),
  /** The strongest gust; left out, as much above the mean as gusts commonly are. */
  gustMetresPerSecond: v.optional(within(...CAUTION_LIMITS.gustMetresPerSecond, 'm/s')),
});

/** What whoever answers for the building says that its roof carries, beside its own weight. */
const roofLoad = v.strictObject({
  /** Spread over the deck, kN/m². */
  kilonewtonsPerSquareMetre: v.optional(within(...CAUTION_LIMITS.areaLoad, 'kN/m²')),
  /** Under one foot or wheel, kN. */
  kilonewtons: v.optional(within(...CAUTION_LIMITS.pointLoad, 'kN')),
});

/** A way off the roof that is no stair house: a hatch, a gate to the next roof, a fire stair. */
const wayOut = v.strictObject({ id, label, at: point });

/** What somebody wrote about a caution, by its key. */
const note = v.strictObject({
  key: v.pipe(
    v.string('the key of a caution'),
    v.maxLength(CAUTION_LIMITS.keyCharacters, 'a key of at most 4,000 characters'),
    v.regex(/^[a-z]+(?:-[a-z]+)*(?:\/[A-Za-z0-9-]+)*$/, 'a key such as wind/stand-1'),
  ),
  note: v.pipe(
    v.string('a note'),
    v.minLength(1, 'a note of at least one character'),
    v.maxLength(CAUTION_LIMITS.noteCharacters, 'a note of at most 400 characters'),
  ),
});

/** What is entered for cautions: the forecast, the roof's word, the ways out, and notes on what was found. */
export const cautions = v.strictObject({
  wind: v.optional(wind),
  roofLoad: v.optional(roofLoad),
  /** How wide the way out is kept; left out, 0.71 m; see core/cautions/ways. */
  wayOutMetres: v.optional(within(...CAUTION_LIMITS.wayOutMetres, 'metres')),
  waysOut: v.optional(v.pipe(v.array(wayOut), v.maxLength(20, 'at most 20 ways out'))),
  notes: v.optional(v.pipe(v.array(note), v.maxLength(400, 'at most 400 notes on cautions'))),
});

export type CautionsEntered = v.InferOutput<typeof cautions>;
export type Forecast = v.InferOutput<typeof wind>;
export type RoofLoad = v.InferOutput<typeof roofLoad>;
