import * as v from 'valibot';
import { asset } from './asset';
import {
  boxSize,
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
import { itemCommon as common, id } from './texts';

/** Base centre of the thing, and the compass direction that its front faces. */
const standing = { at: point, headingDegrees };
const path = v.pipe(
  v.array(spot),
  v.minLength(2, 'at least two corners'),
  v.maxLength(400, 'at most 400 corners'),
);
/** A run along corners; `baseMetres` is the height of its foot, `closed` joins the last corner to the first. */
const run = { path, closed: v.boolean('true or false'), baseMetres: coordinate, heightMetres: sizeMetres };
/** A way through a run: a gate, a door, a window. */
const opening = v.strictObject({
  id,
  /** From the first corner along the run to the middle of the opening. */
  alongMetres: lengthMetres,
  widthMetres: sizeMetres,
  /** From the run's foot up to the opening's lower edge; 0 for what one walks through. */
  sillMetres: lengthMetres,
  heightMetres: sizeMetres,
});
const openings = v.optional(v.pipe(v.array(opening), v.maxLength(100, 'at most 100 openings')));
const outline = v.pipe(
  v.array(spot),
  v.minLength(3, 'at least three corners'),
  v.maxLength(400, 'at most 400 corners'),
);
const material = v.picklist(
  ['brick', 'render', 'timber', 'metal', 'concrete'],
  'brick, render, timber, metal or concrete',
);
/** Woven wire: pitch of the cells and diameter of the wire. Openness follows from the two. */
const mesh = v.strictObject({
  cellMetres: within(0.003, 0.5, 'metres'),
  wireMetres: within(0.0002, 0.05, 'metres'),
});

const fileUnits = within(-1e9, 1e9, 'units');
const filePoint = v.strictTuple(
  [fileUnits, fileUnits, fileUnits],
  'a point [x, y, z] in the file’s own units',
);

const deck = v.strictObject({
  ...common,
  kind: v.literal('deck'),
  outline,
  /** Holes through it: a light well, a hatch. Each lies inside the outline, and none over another. */
  holes: v.optional(v.pipe(v.array(v.strictObject({ id, outline })), v.maxLength(40, 'at most 40 holes'))),
  /** Height of the walking surface. */
  topMetres: coordinate,
  /** How far the building's walls are drawn below the deck. */
  dropMetres: sizeMetres,
});
const parapet = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('parapet'),
  openings,
  thicknessMetres: sizeMetres,
  copingMetres: lengthMetres,
  material,
});
const wall = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('wall'),
  openings,
  thicknessMetres: sizeMetres,
  material,
});
const fence = v.strictObject({
  ...common,
  ...run,
  kind: v.literal('fence'),
  openings,
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
/** A level to stand on: a top on a frame of legs. */
const riser = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('riser'),
  size: boxSize,
});
/** A scan or a model of the real place, out of a file that is kept beside the plan. */
const model = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('model'),
  asset,
  /** Which of the file's own axes points up. */
  up: v.picklist(['y', 'z'], 'y or z'),
  /** Metres for one unit of the file. */
  metresPerUnit: within(1e-6, 1e6, 'metres'),
  /** The file's own extent, in its own units and axes: the middle of its foot comes to `at`, and where the file is missing a box of this size stands there. */
  extent: v.strictObject({ lowest: filePoint, highest: filePoint }),
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
/** A flat matt board to try lenses and exposure by, held on a pole whose foot stands on `at`; it faces its heading. */
const chart = v.strictObject({
  ...common,
  ...standing,
  kind: v.literal('chart'),
  /** Of the board, its white margin included. */
  widthMetres: sizeMetres,
  heightMetres: sizeMetres,
  /** From the foot up to the middle of the board, about which it tilts. */
  middleMetres: lengthMetres,
  tiltDegrees,
  face: v.variant(
    'kind',
    [
      /** Black and white squares by turns, as large as leave half of one of white all around. */
      v.strictObject({ kind: v.literal('squares'), columns: wholeCount(2, 24), rows: wholeCount(2, 24) }),
      v.strictObject({ kind: v.literal('grey card') }),
    ],
    'a face: {"kind": "squares", "columns": …, "rows": …} or {"kind": "grey card"}',
  ),
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
  [
    deck,
    parapet,
    wall,
    fence,
    stairHouse,
    shed,
    tank,
    post,
    line,
    chimney,
    box,
    riser,
    pane,
    chart,
    skylineBlock,
    model,
  ],
  'a kind of set piece: deck, parapet, wall, fence, stair house, shed, tank, post, line, chimney, box, riser, pane, chart, skyline block or model',
);

export type Piece = v.InferOutput<typeof piece>;
export type Material = v.InferOutput<typeof material>;
export type ChartFace = v.InferOutput<typeof chart>['face'];
export type Mesh = v.InferOutput<typeof mesh>;
export type Opening = v.InferOutput<typeof opening>;
