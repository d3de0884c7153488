import * as v from 'valibot';
import { headingDegrees, lengthMetres, point, share, spot, tiltDegrees, wholeCount, within } from './numbers';
import { id, label } from './texts';

/** What a setup's numbers may be, lowest and highest, in the unit of each field's name. */
export const SETUP_LIMITS = {
  delivery: [0.2, 5],
  stop: [0.5, 128],
  iso: [1, 1e6],
  shutterDegrees: [1, 360],
  framesPerSecond: [1, 1000],
  ndStops: [0, 20],
  filterLossStops: [0, 5],
  balanceKelvin: [1000, 20000],
} as const satisfies Record<string, readonly [lowest: number, highest: number]>;

const ranged = (field: keyof typeof SETUP_LIMITS, unit: string) => {
  const [lowest, highest] = SETUP_LIMITS[field];
  return within(lowest, highest, unit);
};

/** A moment: on the action's clock, or that long after a beat where one is named. */
const moment = { atSeconds: within(0, 3600, 'seconds'), beat: v.optional(id) };

/** Where the camera is at a moment: entrance pupil, pan as a compass heading, tilt, roll. */
const cameraKey = v.strictObject({
  ...moment,
  position: point,
  headingDegrees: within(-720, 720, 'degrees'),
  tiltDegrees,
  rollDegrees: within(-180, 180, 'degrees'),
  /** How far along its track the dolly is, from the track's rear end: then x and z of `position` follow from it. */
  alongMetres: v.optional(lengthMetres),
  /** How far a zoom is in, where the lens is one. */
  focalMm: v.optional(within(1, 3000, 'mm')),
});

/** What a lens is focused on: somebody's eyes, or a distance from the image plane. */
const focusOn = [
  v.strictObject({ follow: id }),
  v.strictObject({ metres: within(0.01, 10000, 'metres') }),
] as const;

/** The look-out for somebody: the operator keeps their eyes at a place of the frame, 0..1 from its left and top edges. */
const operator = v.strictObject({
  hold: id,
  at: v.strictTuple([share, share], '[x, y] in 0..1 of the frame'),
});

/** The unrest of a camera on a shoulder: a seeded drift that never gets farther than this. */
const sway = v.strictObject({
  seed: wholeCount(0, 1e9),
  metres: within(0, 0.5, 'metres'),
  degrees: within(0, 20, 'degrees'),
  /** Whether the report counts as close what the sway might bring to the frame line. */
  counted: v.boolean('true or false'),
});

/** A mark that lies elsewhere while this setup is shot; the master's marks stay. */
const cheat = v.strictObject({
  performer: id,
  mark: id,
  at: spot,
  /** Which way they face there; left out, as at the master's mark. */
  headingDegrees: v.optional(headingDegrees),
});

/** What lies before the lens and spreads its highlights: strength 1 for the full grade, a quarter for a quarter. */
const filter = v.strictObject({
  kind: v.picklist(['mist', 'halation'], 'mist or halation'),
  strength: within(0, 4, ''),
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
  delivery: ranged('delivery', ''),
  /** Another aspect ratio that is taken out of the first. */
  secondDelivery: v.optional(ranged('delivery', '')),
  stop: ranged('stop', ''),
  iso: ranged('iso', ''),
  shutterDegrees: ranged('shutterDegrees', 'degrees'),
  framesPerSecond: ranged('framesPerSecond', 'frames per second'),
  ndStops: ranged('ndStops', 'stops'),
  /** What the other filters before the lens take. */
  filterLossStops: v.optional(ranged('filterLossStops', 'stops')),
  balanceKelvin: ranged('balanceKelvin', 'kelvin'),
  focus: v.union(
    [
      ...focusOn,
      v.strictObject({
        racks: v.pipe(
          v.array(
            v.strictObject({
              ...moment,
              /** How long the pull takes, until `atSeconds`; from the rack before, or what was held before it. */
              pullSeconds: within(0, 60, 'seconds'),
              on: v.union(focusOn, 'either {"follow": "id of a performer"} or {"metres": distance}'),
            }),
          ),
          v.minLength(1, 'at least one rack'),
          v.maxLength(200, 'at most 200 racks'),
        ),
      }),
    ],
    'either {"follow": "id of a performer"}, {"metres": distance} or {"racks": [...]}',
  ),
  support: v.picklist(
    ['sticks', 'dolly', 'handheld', 'body rig', 'slider', 'jib', 'ladder'],
    'sticks, dolly, handheld, body rig, slider, jib or ladder',
  ),
  /** Id of the track in the plan's gear that a dolly runs on. */
  track: v.optional(id),
  operator: v.optional(operator),
  sway: v.optional(sway),
  filter: v.optional(filter),
  cheats: v.optional(v.pipe(v.array(cheat), v.maxLength(200, 'at most 200 cheated marks'))),
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
export type Cheat = v.InferOutput<typeof cheat>;
export type Filter = v.InferOutput<typeof filter>;
export type FocusOn = v.InferOutput<(typeof focusOn)[number]>;
export type Sway = v.InferOutput<typeof sway>;
export type Operator = v.InferOutput<typeof operator>;
