import * as v from 'valibot';
import { point, tiltDegrees, within } from './numbers';
import { id, label } from './texts';

/** Where the camera is at a moment of the action's clock: entrance pupil, pan as a compass heading, tilt, roll. */
const cameraKey = v.strictObject({
  atSeconds: within(0, 3600, 'seconds'),
  position: point,
  headingDegrees: within(-720, 720, 'degrees'),
  tiltDegrees,
  rollDegrees: within(-180, 180, 'degrees'),
});

/** A camera position with its lens, support, move and stop, and the span of action that it covers. */
export const setup = v.strictObject({
  id,
  label,
  /** Ids in the plan's kit: the body, its gate mode and the lens. */
  body: id,
  mode: id,
  lens: id,
  /** Aspect ratio that goes out. */
  delivery: within(0.2, 5, ''),
  stop: within(0.5, 128, ''),
  iso: within(1, 1e6, ''),
  shutterDegrees: within(1, 360, 'degrees'),
  framesPerSecond: within(1, 1000, 'frames per second'),
  ndStops: within(0, 20, 'stops'),
  balanceKelvin: within(1000, 20000, 'kelvin'),
  focus: v.union(
    [v.strictObject({ follow: id }), v.strictObject({ metres: within(0.01, 10000, 'metres') })],
    'either {"follow": "id of a performer"} or {"metres": distance}',
  ),
  support: v.picklist(
    ['sticks', 'dolly', 'handheld', 'body rig', 'slider', 'jib', 'ladder'],
    'sticks, dolly, handheld, body rig, slider, jib or ladder',
  ),
  /** The beats between which this setup covers the action. */
  span: v.strictObject({ from: id, to: id }),
  move: v.strictObject({
    ease: v.picklist(['linear', 'eased'], 'linear or eased'),
    keys: v.pipe(
      v.array(cameraKey),
      v.minLength(1, 'at least one camera key'),
      v.maxLength(400, 'at most 400 keys'),
    ),
  }),
});

export type CameraKey = v.InferOutput<typeof cameraKey>;
export type Setup = v.InferOutput<typeof setup>;
