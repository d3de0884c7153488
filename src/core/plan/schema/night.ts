import * as v from 'valibot';
import { wholeCount, within } from './numbers';
import { clockTime, utcOffsetHours } from './sky';
import { anyOf, id, label } from './texts';

const minutes = v.pipe(within(0, 600, 'minutes'), v.integer('whole minutes'));

/** What a setup takes, one after the other; `move` is what it takes to leave it for the next. */
const times = {
  rig: v.optional(minutes),
  light: v.optional(minutes),
  rehearse: v.optional(minutes),
  shoot: v.optional(minutes),
  move: v.optional(minutes),
};

const cost = v.optional(minutes);
const sharedTimes = v.strictObject(times);

/** What changes from one setup to the next, in the order in which it is told. */
export const NIGHT_COSTS = [
  'lens',
  'body',
  'filter',
  'support',
  'lighting',
  'head',
  'halfTurn',
  'tenMetres',
  'wetDown',
] as const;

/** What each change costs, in minutes; see core/night/order/changes for what counts as one. */
const costs = v.strictObject(v.entriesFromList(NIGHT_COSTS, cost));

/** Between two times by the clock. */
const between = { from: v.optional(clockTime), until: v.optional(clockTime) };

/** What the night knows of one setup; whatever is left out is as with all others. */
const nightSetup = v.strictObject({
  setup: id,
  ...times,
  /** Setups with the same word here are lit alike; left out, as the plan is lit. */
  lighting: v.optional(label),
  /** Shot before it is dark, or while it is; left out, either. */
  when: v.optional(v.picklist(['before dark', 'after dark'], 'before dark or after dark')),
  /** Shot between these. */
  ...between,
  /** How its ground has to be; left out, however it is. */
  ground: v.optional(v.picklist(['wet', 'dry'], 'wet or dry')),
  /** Who is needed; left out, whom its frame has. */
  cast: v.optional(v.pipe(v.array(id), v.maxLength(60, 'at most 60 performers'))),
});

/** When a performer is there: in from, out by. */
const nightCast = v.strictObject({ performer: id, ...between });

/** What spares are counted of. */
export const SPARED = [
  'lenses',
  'supports',
  'batteries',
  'heads',
  'practicals',
  'gels',
  'modifiers',
  'stands',
  'bags',
  'flags',
  'frames',
  'cables',
  'mats',
  'tape',
  'water',
] as const;
/** One more for every so many of a thing, at least one. */
const spare = v.strictObject({
  of: v.picklist(SPARED, anyOf(SPARED)),
  oneFor: wholeCount(1, 100),
});

/** What of the packing list a plan does not show by itself. */
const packing = v.strictObject({
  /** Cable that is taken on top of what lies on the roof, as a share of it. */
  slack: v.optional(within(0, 1, '')),
  /** How deep the water of a wet-down lies on what it wets. */
  waterMillimetres: v.optional(within(0, 20, 'mm')),
  /** How long a battery of the camera lasts. */
  batteryHours: v.optional(within(0.1, 24, 'hours')),
  spares: v.optional(v.pipe(v.array(spare), v.maxLength(40, 'at most 40 rules for spares'))),
});

/** The night's work: when it begins and should end, what its setups take, and in which order they come. */
export const night = v.strictObject({
  /** When the crew is called. */
  call: v.optional(clockTime),
  /** By when everyone should be wrapped. */
  wrapBy: v.optional(clockTime),
  /** Hours that the clock is ahead of universal time at the noon before; left out, as the sky's clock, else by longitude. */
  utcOffsetHours: v.optional(utcOffsetHours),
  /** Where the clocks are put forward or back in the night: at which time of the old clock, and what holds from then on. */
  clockChange: v.optional(v.strictObject({ time: clockTime, utcOffsetHours })),
  /** A break that begins at most so many hours after call; one of 0 minutes is none. */
  meal: v.optional(v.strictObject({ afterHours: within(0.5, 12, 'hours'), minutes })),
  /** What it takes from the last shot until everyone is off. */
  strike: v.optional(minutes),
  /** From which dusk to which dawn it counts as dark. */
  dark: v.optional(
    v.picklist(['civil', 'nautical', 'astronomical'], 'civil, nautical or astronomical (twilight)'),
  ),
  /** What all setups take that say nothing of it. */
  times: v.optional(sharedTimes),
  costs: v.optional(costs),
  /** How long wetted ground stays wet, once nobody keeps it so. */
  dries: v.optional(minutes),
  /** Whether the ground is to be wetted once in the night and no more. */
  wetOnce: v.optional(v.literal(true, 'true, or left out')),
  setups: v.optional(v.pipe(v.array(nightSetup), v.maxLength(400, 'at most 400 setups'))),
  cast: v.optional(v.pipe(v.array(nightCast), v.maxLength(60, 'at most 60 performers'))),
  /** Ids of setups as they are shot; those left out follow as the plan has them. */
  order: v.optional(v.pipe(v.array(id), v.maxLength(400, 'at most 400 setups'))),
  packing: v.optional(packing),
});

export type NightPlan = v.InferOutput<typeof night>;
export type NightSetup = v.InferOutput<typeof nightSetup>;
export type NightCast = v.InferOutput<typeof nightCast>;
export type NightPhase = keyof v.InferOutput<typeof sharedTimes>;
export type NightCost = (typeof NIGHT_COSTS)[number];
export type NightPacking = v.InferOutput<typeof packing>;
export type Spare = v.InferOutput<typeof spare>;
export type Spared = Spare['of'];
export type DarkKind = NonNullable<NightPlan['dark']>;
