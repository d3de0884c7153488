import * as v from 'valibot';
import { boxSize, sizeMetres, within } from './numbers';
import { id, label, longText } from './texts';

const millimetres = (lowest: number, highest: number) => within(lowest, highest, 'mm');

/** A camera body: its gate modes, each with the used rectangle of sensor or film in millimetres. */
const body = v.strictObject({
  id,
  label,
  modes: v.pipe(
    v.array(
      v.strictObject({
        id,
        label,
        gateMm: v.strictTuple([millimetres(1, 200), millimetres(1, 200)], '[width, height] in mm'),
        /** Diameter of a blur that still passes for sharp; where it is left out, what is usual for such a gate. */
        circleMm: v.optional(within(0.001, 0.5, 'mm')),
      }),
    ),
    v.minLength(1, 'at least one gate mode'),
    v.maxLength(40, 'at most 40 gate modes'),
  ),
  source: v.optional(longText),
});

/** Brown–Conrady coefficients on normalised coordinates with fx = f / squeeze, as OpenCV defines them. */
const distortion = v.strictObject({
  k1: within(-2, 2, ''),
  k2: within(-2, 2, ''),
  k3: within(-2, 2, ''),
  p1: within(-0.5, 0.5, ''),
  p2: within(-0.5, 0.5, ''),
});

const lens = v.strictObject({
  id,
  label,
  /** Of a zoom, the shortest. */
  focalMm: millimetres(1, 3000),
  /** The longest focal length of a zoom. */
  longestMm: v.optional(millimetres(1, 3000)),
  squeeze: within(1, 3, 'times'),
  widestStop: within(0.5, 64, ''),
  narrowestStop: within(0.5, 128, ''),
  closeFocusMetres: within(0.01, 20, 'metres'),
  imageCircleMm: v.optional(millimetres(1, 300)),
  /** How far the image plane sits behind the entrance pupil, along the axis. */
  pupilToImageMm: v.optional(millimetres(0, 1000)),
  distortion: v.optional(distortion),
  frontDiameterMm: v.optional(millimetres(5, 400)),
  kilograms: v.optional(within(0.01, 60, 'kg')),
  source: v.optional(longText),
});

/** A class of head: what is published of such a lamp; everything else is derived. */
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
