import * as v from 'valibot';
import { distribution, reading } from './distribution';
import { boxSize, sizeMetres, within } from './numbers';
import { id, label, longText } from './texts';

type Range = readonly [lowest: number, highest: number];

/** What a lens may have, lowest and highest, in the unit of each field's name. */
export const LENS_LIMITS = {
  focalMm: [1, 3000],
  longestMm: [1, 3000],
  squeeze: [1, 3],
  widestStop: [0.5, 64],
  narrowestStop: [0.5, 128],
  closeFocusMetres: [0.01, 20],
  imageCircleMm: [1, 300],
  pupilToImageMm: [0, 1000],
  frontDiameterMm: [5, 400],
  kilograms: [0.01, 60],
  k1: [-2, 2],
  k2: [-2, 2],
  k3: [-2, 2],
  p1: [-0.5, 0.5],
  p2: [-0.5, 0.5],
} as const satisfies Record<string, Range>;

/** What a gate mode may have, millimetres. */
export const MODE_LIMITS = { gateMm: [1, 200], circleMm: [0.001, 0.5] } as const satisfies Record<
  string,
  Range
>;

const ranged = ([lowest, highest]: Range, unit: string) => within(lowest, highest, unit);

/** A camera body: its gate modes, each with the used rectangle of sensor or film in millimetres. */
export const body = v.strictObject({
  id,
  label,
  modes: v.pipe(
    v.array(
      v.strictObject({
        id,
        label,
        gateMm: v.strictTuple(
          [ranged(MODE_LIMITS.gateMm, 'mm'), ranged(MODE_LIMITS.gateMm, 'mm')],
          '[width, height] in mm',
        ),
        /** Diameter of a blur that still passes for sharp; where it is left out, what is usual for such a gate. */
        circleMm: v.optional(ranged(MODE_LIMITS.circleMm, 'mm')),
      }),
    ),
    v.minLength(1, 'at least one gate mode'),
    v.maxLength(40, 'at most 40 gate modes'),
  ),
  source: v.optional(longText),
});

/** Brown–Conrady coefficients on normalised coordinates with fx = f / squeeze, as OpenCV defines them. */
const distortion = v.strictObject({
  k1: ranged(LENS_LIMITS.k1, ''),
  k2: ranged(LENS_LIMITS.k2, ''),
  k3: ranged(LENS_LIMITS.k3, ''),
  p1: ranged(LENS_LIMITS.p1, ''),
  p2: ranged(LENS_LIMITS.p2, ''),
});

export const lens = v.strictObject({
  id,
  label,
  /** The set that it comes in, by name. */
  set: v.optional(label),
  /** Of a zoom, the shortest. */
  focalMm: ranged(LENS_LIMITS.focalMm, 'mm'),
  /** The longest focal length of a zoom. */
  longestMm: v.optional(ranged(LENS_LIMITS.longestMm, 'mm')),
  squeeze: ranged(LENS_LIMITS.squeeze, 'times'),
  widestStop: ranged(LENS_LIMITS.widestStop, ''),
  narrowestStop: ranged(LENS_LIMITS.narrowestStop, ''),
  closeFocusMetres: ranged(LENS_LIMITS.closeFocusMetres, 'metres'),
  imageCircleMm: v.optional(ranged(LENS_LIMITS.imageCircleMm, 'mm')),
  /** How far the image plane sits behind the entrance pupil, along the axis. */
  pupilToImageMm: v.optional(ranged(LENS_LIMITS.pupilToImageMm, 'mm')),
  distortion: v.optional(distortion),
  frontDiameterMm: v.optional(ranged(LENS_LIMITS.frontDiameterMm, 'mm')),
  kilograms: v.optional(ranged(LENS_LIMITS.kilograms, 'kg')),
  source: v.optional(longText),
});

/** A class of head: what is published of such a lamp, or was measured; everything else is derived. */
const headClass = v.strictObject({
  id,
  label,
  form: v.picklist(
    ['spot', 'fresnel', 'panel', 'tube', 'bulb', 'bulkhead', 'sign', 'street'],
    'spot, fresnel, panel, tube, bulb, bulkhead, sign or street',
  ),
  size: boxSize,
  watts: within(0, 50000, 'watts'),
  powerFactor: within(0.1, 1, ''),
  peakCandela: within(0, 1e8, 'candela'),
  /** Full angle between the directions of half the peak intensity. */
  beamDegrees: within(1, 360, 'degrees'),
  /** Full angle between the directions of a tenth of the peak intensity. */
  fieldDegrees: within(1, 360, 'degrees'),
  kelvin: within(1000, 20000, 'kelvin'),
  /** Of the lamp with its yoke; left out, about what such a size weighs. */
  kilograms: v.optional(within(0.01, 300, 'kg')),
  /** Whether its beam and housing get hot; left out, where its white, form and watts are those of a filament. */
  hot: v.optional(v.boolean('true or false')),
  /** Measured light, which takes the place of the candela and the angles above. */
  distribution: v.optional(distribution),
  /** A meter's word for the candela above, where there is no table. */
  reading: v.optional(reading),
  source: v.optional(longText),
});

const standClass = v.strictObject({
  id,
  label,
  lowestMetres: within(0.1, 10, 'metres'),
  highestMetres: within(0.2, 12, 'metres'),
  /** Diameter of the circle through the feet. */
  footprintMetres: within(0.1, 5, 'metres'),
  sections: v.pipe(within(1, 6, ''), v.integer('a whole number')),
  baseTubeMetres: within(0.008, 0.2, 'metres'),
  /** How much thinner each riser is than the one below it. */
  tubeStepMetres: within(0, 0.05, 'metres'),
  legTubeMetres: within(0.005, 0.1, 'metres'),
  /** Height at which the legs meet the column. */
  collarMetres: sizeMetres,
  /** Left out, about what such tubes weigh in aluminium. */
  kilograms: v.optional(within(0.1, 300, 'kg')),
  source: v.optional(longText),
});

/** The bodies, lenses, heads and stands that a plan uses, copied in. */
export const kit = v.strictObject({
  bodies: v.pipe(v.array(body), v.maxLength(100, 'at most 100 bodies')),
  lenses: v.pipe(v.array(lens), v.maxLength(400, 'at most 400 lenses')),
  heads: v.pipe(v.array(headClass), v.maxLength(400, 'at most 400 heads')),
  stands: v.pipe(v.array(standClass), v.maxLength(100, 'at most 100 stands')),
});

export type Body = v.InferOutput<typeof body>;
export type Lens = v.InferOutput<typeof lens>;
export type Distortion = v.InferOutput<typeof distortion>;
export type HeadClass = v.InferOutput<typeof headClass>;
export type StandClass = v.InferOutput<typeof standClass>;
export type Kit = v.InferOutput<typeof kit>;
