import * as v from 'valibot';
import { spot } from './numbers';
import { id, label } from './texts';

/** From *wet down* on, a deck mirrors. */
const wetness = v.picklist(['dry', 'damp', 'wet down', 'puddled'], 'dry, damp, wet down or puddled');

/** A part of the roof that is wetter or drier than the rest; its outline may be any, the decks under it take it on. */
const area = v.strictObject({
  id,
  label: v.optional(label),
  wetness,
  /** Corners [x, z], metres; where it crosses itself, what is surrounded twice lies outside. */
  outline: v.pipe(
    v.array(spot),
    v.minLength(3, 'at least three corners'),
    v.maxLength(60, 'at most 60 corners'),
  ),
});

export const ground = v.strictObject({
  surface: v.picklist(
    ['concrete', 'asphalt', 'felt', 'tile', 'timber'],
    'concrete, asphalt, felt, tile or timber',
  ),
  /** Outside of all areas. */
  wetness,
  /** Later ones lie over earlier ones. */
  areas: v.optional(v.pipe(v.array(area), v.maxLength(60, 'at most 60 areas'))),
});

export type Ground = v.InferOutput<typeof ground>;
export type Wetness = Ground['wetness'];
export type WetArea = v.InferOutput<typeof area>;
