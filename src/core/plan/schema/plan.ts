import * as v from 'valibot';
import { beat, line, pass, performer } from './cast';
import { frameLine, tape, underlay } from './drawing';
import { gear } from './gear';
import { kit } from './kit';
import { within } from './numbers';
import { piece } from './pieces';
import { setup } from './setup';
import { label, longText } from './texts';

/** The version that this program writes. */
export const PLAN_VERSION = 1;

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
});

const ground = v.strictObject({
  surface: v.picklist(
    ['concrete', 'asphalt', 'felt', 'tile', 'timber'],
    'concrete, asphalt, felt, tile or timber',
  ),
  /** From *wet down* on, the deck mirrors. */
  wetness: v.picklist(['dry', 'damp', 'wet down', 'puddled'], 'dry, damp, wet down or puddled'),
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
  underlay: v.optional(underlay),
  frameLines: v.optional(v.pipe(v.array(frameLine), v.maxLength(20, 'at most 20 frame lines'))),
});

export type Plan = v.InferOutput<typeof plan>;
export type Ground = v.InferOutput<typeof ground>;
