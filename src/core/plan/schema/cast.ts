import * as v from 'valibot';
import { coordinate, headingDegrees, point, spot, tiltDegrees, within } from './numbers';
import { colour, id, itemCommon, label } from './texts';

const stance = v.picklist(
  ['stand', 'walk', 'run', 'crouch', 'sit', 'lean', 'arms out', 'reach', 'holding'],
  'stand, walk, run, crouch, sit, lean, arms out, reach or holding',
);

/** What somebody turns to: another performer, or a point of the roof. */
const towards = [v.strictObject({ who: id }), v.strictObject({ point })] as const;
const faces = v.union(towards, 'either {"who": "id of a performer"} or {"point": [x, y, z]}');
/** The same for the head alone, which may also be turned by angles from the body: clockwise and up are positive. */
const looks = v.union(
  [...towards, v.strictObject({ turnDegrees: within(-90, 90, 'degrees'), tiltDegrees })],
  'either {"who": "id of a performer"}, {"point": [x, y, z]} or {"turnDegrees": …, "tiltDegrees": …}',
);

/** How a performer comes to a mark from the one before it. */
const way = v.strictObject({
  /** Places that the walk passes in this order; it is straight where there are none. */
  through: v.pipe(
    v.array(spot),
    v.minLength(1, 'at least one place'),
    v.maxLength(40, 'at most 40 places on the way'),
  ),
  /** Through the places in straight lines, or on one smooth curve. */
  line: v.picklist(['straight', 'curved'], 'straight or curved'),
});

/** Where a performer stands at a beat, and which way they face; they stay `holdSeconds` and then walk to the next mark. */
export const mark = v.strictObject({
  id,
  beat: id,
  at: spot,
  /** Height of the floor under the mark; 0 where left out. */
  floorMetres: v.optional(coordinate),
  headingDegrees,
  stance,
  holdSeconds: within(0, 3600, 'seconds'),
  /** What the body faces while here, in place of the heading; left out, the heading. */
  faces: v.optional(faces),
  /** Where the head is turned while here; left out, ahead. */
  looks: v.optional(looks),
  way: v.optional(way),
  /** What the body faces on the walk here, walking backwards or sideways where it has to; left out, the way. */
  facesOnTheWay: v.optional(faces),
  /** Where the head is turned on the walk here; left out, ahead. */
  looksOnTheWay: v.optional(looks),
});

/** Somebody in front of the lens: body, clothes, and the marks they go to. */
export const performer = v.strictObject({
  ...itemCommon,
  /** Which table of body proportions is used. */
  figure: v.picklist(['male', 'female'], 'male or female'),
  statureMetres: within(0.5, 2.5, 'metres'),
  build: v.picklist(['slight', 'medium', 'heavy'], 'slight, medium or heavy'),
  clothes: v.strictObject({
    upper: v.picklist(['coat', 'jacket', 'jersey', 'shirt'], 'coat, jacket, jersey or shirt'),
    upperColour: colour,
    lowerColour: colour,
    head: v.picklist(['bare', 'cap', 'hood', 'bun', 'long hair'], 'bare, cap, hood, bun or long hair'),
    headColour: colour,
    skinColour: colour,
  }),
  /** What they carry to begin with; it may pass on at a beat. */
  prop: v.optional(v.picklist(['bird', 'box', 'ball', 'case'], 'bird, box, ball or case')),
  marks: v.pipe(v.array(mark), v.maxLength(200, 'at most 200 marks')),
});

/** A named moment on the action's clock. */
export const beat = v.strictObject({ id, label, atSeconds: within(0, 3600, 'seconds') });

/** What one performer carries goes over to another at a beat. */
export const pass = v.strictObject({ id, beat: id, from: id, to: id });

/** A pair whose line the camera keeps to one side of. */
export const line = v.strictObject({
  id,
  pair: v.strictTuple([id, id], 'the ids of two performers'),
  /** The setup that establishes the side; left out, the first that frames both. */
  establishedBy: v.optional(id),
});

export type Stance = v.InferOutput<typeof stance>;
export type Mark = v.InferOutput<typeof mark>;
export type Towards = v.InferOutput<typeof faces>;
export type Looks = v.InferOutput<typeof looks>;
export type Way = v.InferOutput<typeof way>;
export type Pass = v.InferOutput<typeof pass>;
export type Line = v.InferOutput<typeof line>;
export type Performer = v.InferOutput<typeof performer>;
export type Beat = v.InferOutput<typeof beat>;
