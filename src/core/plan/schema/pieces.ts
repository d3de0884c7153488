import * as v from 'valibot';
import {
  boxSize,
  coordinate,
  headingDegrees,
  lengthMetres,
  point,
  share,
  sizeMetres,
  spot,
  wholeCount,
  within,
} from './numbers';
import { id, label, wish } from './texts';

const common = { id, label, wish: v.optional(wish) };
/** Base centre of the thing, and the compass direction that its front faces. */
const standing = { at: point, headingDegrees };
const path = v.pipe(
  v.array(spot),
  v.minLength(2, 'at least two corners'),
  v.maxLength(400, 'at most 400 corners'),
);
/** A run along corners; `baseMetres` is the height of its foot, `closed` joins the last corner to the first. */
const run = { path, closed: v.boolean('true or false'), baseMetres: coordinate, heightMetres: sizeMetres };
const material = v.picklist(
  ['brick', 'render', 'timber', 'metal', 'concrete'],
  'brick, render, timber, metal or concrete',
);
/** Woven wire: pitch of the cells and diameter of the wire. Openness follows from the two. */
const mesh = v.strictObject({
  cellMetres: within(0.003, 0.5, 'metres'),
  wireMetres: within(0.0002, 0.05, 'metres'),
});

const deck = v.strictObject({
  ...common,
  kind: v.literal('deck'),
  outline: v.pipe(
    v.array(spot),
    v.minLength(3, 'at least three corners'),
    v.maxLength(400, 'at most 400 corners'),
  ),
  /** Height of the walking surface. */
  topMetres: coordinate,
  /** How far the building's walls are drawn below the deck. */
  dropMetres: sizeMetres,
});
const parapet = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('parapet'),
  thicknessMetres: sizeMetres,
  copingMetres: lengthMetres,
  material,
});
const wall = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('wall'),
  thicknessMetres: sizeMetres,
  material,
});
const fence = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('fence'),
  postEveryMetres: within(0.2, 20, 'metres'),
  postMetres: within(0.005, 0.5, 'metres'),
  rails: wholeCount(0, 12),
  mesh: v.nullable(mesh),
});
const stairHouse = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('stair house'),
  size: boxSize,
  /** The door stands in the front; `alongMetres` runs from the middle of the front to the right as one faces it. */
  door: v.strictObject({ widthMetres: sizeMetres, heightMetres: sizeMetres, alongMetres: coordinate }),
  overhangMetres: lengthMetres,
  material,
});
const shed = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('shed'),
  size: boxSize,
  front: v.picklist(['mesh', 'boards', 'open'], 'mesh, boards or open'),
  shelves: wholeCount(0, 12),
  overhangMetres: lengthMetres,
  mesh,
});
const tank = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('tank'),
  diameterMetres: sizeMetres,
  drumMetres: sizeMetres,
  legMetres: lengthMetres,
});
const post = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('post'),
  heightMetres: sizeMetres,
  diameterMetres: sizeMetres,
  /** Length of the crossbar at the top, across the heading; 0 for none. */
  armMetres: lengthMetres,
});
const line = v.strictObject({
  ...common,
  kind: v.literal('line'),
  from: point,
  to: point,
  sagMetres: lengthMetres,
  diameterMetres: within(0.0005, 0.2, 'metres'),
  /** How many cloths hang from it. */
  cloths: wholeCount(0, 40),
});
const chimney = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('chimney'),
  size: boxSize,
  pots: wholeCount(0, 12),
});
const box = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('box'),
  size: boxSize,
  material,
});
/** A flat sheet of glass or mirror, standing on `at`, facing its heading; it reflects. */
const pane = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('pane'),
  widthMetres: sizeMetres,
  heightMetres: sizeMetres,
  finish: v.picklist(['glass', 'mirror'], 'glass or mirror'),
});
const skylineBlock = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('skyline block'),
  size: boxSize,
  windows: v.strictObject({ litShare: share, seed: wholeCount(0, 1e9) }),
});

export const piece = v.variant(
  'kind',
  [deck, parapet, wall, fence, stairHouse, shed, tank, post, line, chimney, box, pane, skylineBlock],
  'a kind of set piece: deck, parapet, wall, fence, stair house, shed, tank, post, line, chimney, box, pane or skyline block',
);

export type Piece = v.InferOutput<typeof piece>;
export type Material = v.InferOutput<typeof material>;
export type Mesh = v.InferOutput<typeof mesh>;
