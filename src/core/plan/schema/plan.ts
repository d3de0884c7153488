import * as v from 'valibot';
import { beat, line, pass, performer } from './cast';
import { cautions } from './cautions';
import { frameLine, tape, underlay } from './drawing';
import { gear } from './gear';
import { ground } from './ground';
import { kit } from './kit';
import { night } from './night';
import { share, wholeCount, within } from './numbers';
import { piece } from './pieces';
import { planPower } from './power';
import { setup } from './setup';
import { probe, sky } from './sky';
import { label, longText } from './texts';
import { PLAN_VERSION } from './version';

const place = v.strictObject({
  label,
  latitudeDegrees: within(-90, 90, 'degrees'),
  longitudeDegrees: within(-180, 180, 'degrees'),
  timeZone: v.pipe(
    v.string('a time zone'),
    v.minLength(1, 'a time zone such as Europe/Lisbon'),
    v.maxLength(60, 'a time zone of at most 60 characters'),
  ),
  date: v.pipe(v.string('a date'), v.isoDate('a date such as 2026-11-20')),
  /** Turn from the plan's −z to true north, clockwise seen from above. */
  northDegrees: within(-360, 360, 'degrees'),
  /** What the mains of the place swing with; left out, as its time zone makes likely. */
  mainsHertz: v.optional(v.picklist([50, 60], '50 or 60 hertz')),
});

/** What the numbers of the dark may be, lowest and highest, stops. */
export const DARK_LIMITS = { contrastStops: [0.01, 4], stopsUnder: [0, 14] } as const;

/** What the limits of an upright may be, lowest and highest. */
export const UPRIGHT_LIMITS = {
  leanDegrees: [0, 45],
  leastHeight: [0, 1],
  likeWidth: [1, 20],
  likeStops: [0, 10],
  among: [1, 50],
} as const;

/** What passes for an upright of the set; see core/light/uprights. */
const uprights = v.strictObject({
  /** Leaning more than this in frame, a member is no upright. */
  leanDegrees: within(...UPRIGHT_LIMITS.leanDegrees, 'degrees'),
  /** Shorter than this, as a share of the frame's height, it counts for nothing. */
  leastHeight: share,
  /** It is like another up to this ratio of widths, */
  likeWidth: within(...UPRIGHT_LIMITS.likeWidth, ''),
  /** and up to so many stops brighter or darker, */
  likeStops: within(...UPRIGHT_LIMITS.likeStops, 'stops'),
  /** and passes beside at least so many others. */
  among: wholeCount(...UPRIGHT_LIMITS.among),
});

/** When something in frame counts as lost in the dark; see core/light/readsInTheDark. */
const dark = v.strictObject({
  /** Less contrast than this with what is round it cannot be told apart. */
  contrastStops: within(...DARK_LIMITS.contrastStops, 'stops'),
  /** Where it and what is round it both lie so far under middle grey, nothing is left to see. */
  stopsUnder: within(...DARK_LIMITS.stopsUnder, 'stops'),
  /** Left out, as is usual. */
  uprights: v.optional(uprights),
});

/** What still counts as close: an item nearer to the frame line than either of the two. */
const safety = v.strictObject({
  metres: within(0, 10, 'metres'),
  frameWidths: within(0, 1, 'frame widths'),
});

/** The whole document, checked strictly: nothing unknown, nothing missing. */
export const plan = v.strictObject({
  standclear: v.literal(PLAN_VERSION, `version ${PLAN_VERSION}`),
  title: label,
  notes: longText,
  place,
  ground,
  safety,
  dark: v.optional(dark),
  kit,
  pieces: v.pipe(v.array(piece), v.maxLength(4000, 'at most 4,000 set pieces')),
  beats: v.pipe(v.array(beat), v.maxLength(400, 'at most 400 beats')),
  cast: v.pipe(v.array(performer), v.maxLength(60, 'at most 60 performers')),
  /** Props that go from hand to hand. */
  passes: v.optional(v.pipe(v.array(pass), v.maxLength(200, 'at most 200 passes'))),
  /** Pairs whose line the cameras keep to. */
  lines: v.optional(v.pipe(v.array(line), v.maxLength(20, 'at most 20 lines'))),
  gear: v.pipe(v.array(gear), v.maxLength(4000, 'at most 4,000 pieces of gear')),
  setups: v.pipe(v.array(setup), v.maxLength(400, 'at most 400 setups')),
  tapes: v.optional(v.pipe(v.array(tape), v.maxLength(400, 'at most 400 tapes'))),
  /** Places where light is metered. */
  probes: v.optional(v.pipe(v.array(probe), v.maxLength(60, 'at most 60 meters'))),
  sky: v.optional(sky),
  power: v.optional(planPower),
  night: v.optional(night),
  underlay: v.optional(underlay),
  cautions: v.optional(cautions),
  frameLines: v.optional(v.pipe(v.array(frameLine), v.maxLength(20, 'at most 20 frame lines'))),
});

export type Plan = v.InferOutput<typeof plan>;
export type { Ground } from './ground';
export type Dark = v.InferOutput<typeof dark>;
export type UprightLimits = v.InferOutput<typeof uprights>;
