import * as v from 'valibot';
import { before, gelled } from './before';
import {
  boxSize,
  clothSize,
  coordinate,
  headingDegrees,
  lengthMetres,
  point,
  share,
  sizeMetres,
  spot,
  tiltDegrees,
  wholeCount,
  within,
} from './numbers';
import { batteryPower, distroPower, drawn, generatorPower, housePower, supply, wire } from './power';
import { gearCommon as common, id } from './texts';

const standing = { at: point, headingDegrees };
/** Either a place of its own, or the id of the stand that carries it (then its place is the top of that stand or arm). */
const carried = v.union(
  [v.strictObject({ at: point }), v.strictObject({ on: id })],
  'either {"at": [x, y, z]} or {"on": "id of a stand"}',
);

const stand = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('stand'),
  /** Id of the stand's class in the plan's kit. */
  stand: id,
  /** Height of the spigot above the foot. */
  heightMetres: sizeMetres,
  /** An arm from the top of the column: length, rise and its own compass heading. */
  arm: v.optional(v.strictObject({ lengthMetres: sizeMetres, tiltDegrees, headingDegrees })),
  /** Diameter of the circle through the feet, where the legs are not opened as far as the class lets them. */
  spreadMetres: v.optional(within(0.1, 5, 'metres')),
  /** Sandbags over its legs. */
  bags: v.optional(v.strictObject({ count: wholeCount(1, 20), kilograms: within(0.5, 50, 'kg each') })),
});

const modifier = v.picklist(
  ['softbox', 'lantern', 'grid', 'barn doors', 'snoot'],
  'softbox, lantern, grid, barn doors or snoot',
);

/**
 * A change of a lamp: at a moment of the action's clock, or that long after a beat, it begins to go to another share of
 * full output, its flicker begins or ends, or both.
 */
export const cue = v.pipe(
  v.strictObject({
    atSeconds: within(0, 3600, 'seconds'),
    beat: v.optional(id),
    /** Share of full output that it comes to; left out, it stays on its way. */
    dim: v.optional(share),
    /** How long that takes; 0 for a switch. */
    fadeSeconds: within(0, 600, 'seconds'),
    /** Whether its flicker plays from here on, at once; left out, as before. */
    flickers: v.optional(v.boolean('true or false')),
  }),
  v.check(({ dim, flickers }) => dim !== undefined || flickers !== undefined, 'dim, flickers or both'),
);
const cues = v.optional(v.pipe(v.array(cue), v.maxLength(60, 'at most 60 cues')));

const head = v.strictObject({
  ...common,
  kind: v.literal('head'),
  /** Id of the head's class in the plan's kit. */
  head: id,
  place: carried,
  /** The point that the axis of the lamp goes through. */
  aim: point,
  modifier: v.optional(modifier),
  before: v.optional(before),
  /** From the spigot up to the axis that the housing tilts about, where it is not as short as its size lets it be. */
  yokeMetres: v.optional(within(0, 3, 'metres')),
  /** Share of full output, until the first cue. */
  dim: share,
  /** Changes on the action's clock, in any order. */
  cues,
  /** Left out, a cord, but for what is as small as lamps on batteries are. */
  supply: v.optional(supply),
});

const cloth = {
  ...common,
  place: carried,
  headingDegrees,
  tiltDegrees,
  size: clothSize,
  /** With its frame; left out, about what such a one weighs. */
  kilograms: v.optional(within(0.05, 200, 'kg')),
};
/** Black cloth in a wire frame; the frame's normal points along heading and tilt. */
const flag = v.strictObject({
  ...cloth,
  kind: v.literal('flag'),
  /** Share of the light that comes straight through a net seen square on; without it the cloth is solid. */
  transmission: v.optional(within(0, 0.95, '')),
});
/** Diffusion stretched in tubing. */
const frame = v.strictObject({ ...cloth, kind: v.literal('frame'), transmission: share });
/** A reflecting sheet in a wire frame. */
const bounce = v.strictObject({ ...cloth, kind: v.literal('bounce'), reflectance: share });

/** An uneven light: a seeded pattern of darkenings, as a failing sign has. */
const flicker = v.strictObject({
  seed: wholeCount(0, 1e9),
  perSecond: within(0.1, 30, 'per second'),
  depth: share,
  /** Whether it is steady until a cue has it flicker. */
  waits: v.optional(v.boolean('true or false')),
});

/** A lamp that belongs to the place. Its size is that of its class; `tint` colours what glows. */
const practical = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('practical'),
  head: id,
  dim: share,
  cues,
  /** Left out, its own: it belongs to the place. */
  supply: v.optional(supply),
  before: v.optional(gelled),
  tint: v.optional(v.pipe(v.string('a colour'), v.regex(/^#[0-9a-f]{6}$/, 'a colour such as #3a7bff'))),
  flicker: v.optional(flicker),
});
const bulbString = v.strictObject({
  ...common,
  kind: v.literal('bulb string'),
  head: id,
  from: point,
  to: point,
  sagMetres: lengthMetres,
  bulbs: wholeCount(1, 200),
  dim: share,
  cues,
  /** Left out, its own: it belongs to the place. */
  supply: v.optional(supply),
  before: v.optional(gelled),
});

/** A radius with a side to it; a track that bends more tightly than half a metre is no track. */
const bend = v.pipe(
  within(-1000, 1000, 'metres'),
  v.check((metres) => Math.abs(metres) >= 0.5, 'a radius of at least 0.5 metres to either side'),
);

const generator = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('generator'),
  size: boxSize,
  /** Left out, as such a size makes likely. */
  power: v.optional(generatorPower),
});
const distro = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('distro'),
  size: boxSize,
  power: v.optional(distroPower),
});
/** Sockets of the house that the crew may use. */
const outlet = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('outlet'),
  size: boxSize,
  power: v.optional(housePower),
});
const battery = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('battery'),
  size: boxSize,
  power: v.optional(batteryPower),
});
/** Whatever else is plugged in: a charger, a kettle, a computer. */
const appliance = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('appliance'),
  size: boxSize,
  drawn,
  supply: v.optional(supply),
});
const cable = v.strictObject({
  ...common,
  kind: v.literal('cable'),
  path: v.pipe(v.array(spot), v.minLength(2, 'at least two points'), v.maxLength(400, 'at most 400 points')),
  baseMetres: coordinate,
  diameterMetres: within(0.002, 0.2, 'metres'),
  /** Ids of the gear that its ends are plugged into: the first and the last point of the path lie there. */
  plugs: v.optional(v.strictObject({ from: v.optional(id), to: v.optional(id) })),
  /** Left out, as such a diameter makes likely. */
  wire: v.optional(wire),
  /** Which circuit of its supply it hangs on, by number; left out, the one with most room. */
  circuit: v.optional(wholeCount(1, 24)),
  /** How much of it stays wound up on a drum or in a tight coil. */
  coiledShare: v.optional(within(0, 0.95, '')),
});
/** Dolly track, `at` its middle, running along its heading there. */
const track = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('track'),
  /** Along its middle line. */
  lengthMetres: sizeMetres,
  gaugeMetres: within(0.1, 3, 'metres'),
  /** Radius of the middle line of a curved track: positive bends to the right of the heading, negative to the left. */
  bendMetres: v.optional(bend),
});
/** What a camera rides on over track or floor. */
const dolly = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('dolly'),
  /** Width of its chassis, height of its push bar, length from bumper to bumper. */
  size: boxSize,
  /** Id of the setup whose camera rides on it: then it stands where that camera is, and in no other setup's way. */
  rides: v.optional(id),
});
const cart = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('cart'),
  size: boxSize,
  monitors: wholeCount(0, 4),
  drawn: v.optional(drawn),
  supply: v.optional(supply),
});
const monitor = v.strictObject({
  ...common,
  kind: v.literal('monitor'),
  place: carried,
  headingDegrees,
  diagonalMetres: within(0.1, 3, 'metres'),
  drawn: v.optional(drawn),
  supply: v.optional(supply),
});
const ladder = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('ladder'),
  heightMetres: sizeMetres,
});
const sandbag = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('sandbag'),
  kilograms: within(0.5, 50, 'kg'),
});

export const gear = v.variant(
  'kind',
  [
    stand,
    head,
    flag,
    frame,
    bounce,
    practical,
    bulbString,
    generator,
    distro,
    outlet,
    battery,
    appliance,
    cable,
    track,
    dolly,
    cart,
    monitor,
    ladder,
    sandbag,
  ],
  'a kind of gear: stand, head, flag, frame, bounce, practical, bulb string, generator, distro, outlet, battery, appliance, cable, track, dolly, cart, monitor, ladder or sandbag',
);

export type Gear = v.InferOutput<typeof gear>;
export type Carried = v.InferOutput<typeof carried>;
export type Cue = v.InferOutput<typeof cue>;
export type Flicker = v.InferOutput<typeof flicker>;
