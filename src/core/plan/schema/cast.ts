import * as v from 'valibot';
import { coordinate, headingDegrees, spot, within } from './numbers';
import { colour, id, itemCommon, label } from './texts';

const stance = v.picklist(
  ['stand', 'walk', 'run', 'crouch', 'sit', 'lean', 'arms out', 'reach', 'holding'],
  'stand, walk, run, crouch, sit, lean, arms out, reach or holding',
);

/** Where a performer stands at a beat, and which way they face; they stay `holdSeconds` and then walk to the next mark. */
const mark = v.strictObject({
  id,
  beat: id,
  at: spot,
  /** Height of the floor under the mark; 0 where left out. */
  floorMetres: v.optional(coordinate),
  headingDegrees,
  stance,
  holdSeconds: within(0, 3600, 'seconds'),
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
  prop: v.optional(v.picklist(['bird', 'box', 'ball', 'case'], 'bird, box, ball or case')),
  marks: v.pipe(v.array(mark), v.maxLength(200, 'at most 200 marks')),
});

/** A named moment on the action's clock. */
export const beat = v.strictObject({ id, label, atSeconds: within(0, 3600, 'seconds') });

export type Stance = v.InferOutput<typeof stance>;
export type Mark = v.InferOutput<typeof mark>;
export type Performer = v.InferOutput<typeof performer>;
export type Beat = v.InferOutput<typeof beat>;
