import { type Corners, cornersOf } from '../../../core/plan/edits/corners';
import { insertCorner } from '../../../core/plan/edits/insertCorner';
import { removeCorner } from '../../../core/plan/edits/removeCorner';
import { setCorner } from '../../../core/plan/edits/setCorner';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { distance, type Spot } from '../geometry/spots';
import { snapCorner } from './snapCorner';
import { type Handle, type HandleInput, type Pull, STEP_METRES } from './types';

/** Corners of more than this are edited when the sheet is nearer: they would lie on each other. */
const MOST_CORNERS = 120;
/** Straight pieces shorter than this have no room for a dot of their own, pixels. */
const SHORTEST_LEG = 48;

/** What has corners: an item, a wet area, or one hole of a deck. */
interface Outline {
  readonly id: string;
  readonly hole?: string;
  readonly corners: Corners;
  readonly called: string;
}

const spot = ([x, z]: Spot): [number, number] => [x, z];
const shifted = (at: Spot, way: Spot): [number, number] => [
  at[0] + way[0] * STEP_METRES,
  at[1] + way[1] * STEP_METRES,
];

/** The corners of the one chosen thing, and dots half way between them that make further ones. */
export function cornerHandles(input: HandleInput, called: string): readonly Handle[] {
  const { plan, ids } = input;
  const [id] = ids;
  const record = ids.length === 1 && id !== undefined ? itemOf(plan, id)?.record : null;
  if (!record || id === undefined) return [];
  const holes = 'holes' in record ? (record.holes ?? []).map((hole) => hole.id) : [];
  return [undefined, ...holes].flatMap((hole): readonly Handle[] => {
    const corners = cornersOf(plan, id, hole);
    if (!corners || corners.spots.length > MOST_CORNERS) return [];
    const of = hole === undefined ? called : `a hole of ${called}`;
    return outlineHandles({ id, corners, called: of, ...(hole === undefined ? {} : { hole }) }, input);
  });
}

/** The corners of one outline or run, and dots half way between them that make further ones. */
export const outlineHandles = (outline: Outline, input: HandleInput): readonly Handle[] => [
  ...cornersOfOutline(outline),
  ...insertsOf(outline, input),
];

const argsOf = ({ id, hole }: Outline) => ({ id, ...(hole === undefined ? {} : { hole }) });

function cornersOfOutline(outline: Outline): readonly Handle[] {
  const { corners, called, hole, id } = outline;
  const { spots, closed } = corners;
  const args = argsOf(outline);
  const isLine = spots.length === 2 && !closed;
  return spots.map((at, index): Handle => {
    const before = spots[index - 1] ?? (closed ? spots.at(-1) : spots[index + 1]) ?? null;
    const after = spots[index + 1] ?? (closed ? spots[0] : null) ?? null;
    const isEnd = !closed && (index === 0 || index === spots.length - 1);
    return {
      key: `corner ${hole ?? ''} ${index}`,
      kind: 'corner',
      name: isEnd
        ? `${index === 0 ? 'Beginning' : 'End'} of ${called}`
        : `Corner ${index + 1} of ${spots.length} of ${called}`,
      at,
      pull: (plan, pull) =>
        setCorner(plan, { ...args, index, to: spot(snapCorner(plan, id, pull, { before, after })) }),
      step: (plan, way) => setCorner(plan, { ...args, index, to: shifted(at, way) }),
      ...(isLine ? {} : { remove: (plan: Plan) => removeCorner(plan, { ...args, index }) }),
    };
  });
}

function insertsOf(outline: Outline, { at: toPane, plan }: HandleInput): readonly Handle[] {
  const { corners, called, hole, id } = outline;
  const record = itemOf(plan, id)?.record;
  if (record && 'from' in record) return [];
  const { spots, closed } = corners;
  const args = argsOf(outline);
  return spots.flatMap((from, index): readonly Handle[] => {
    const to = spots[index + 1] ?? (closed ? spots[0] : undefined);
    if (!to || distance(toPane(from), toPane(to)) < SHORTEST_LEG) return [];
    const middle: Spot = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    const inserted = (before: Plan, at: Spot): Plan => insertCorner(before, { ...args, index, at: spot(at) });
    const moved = (before: Plan, at: Spot): Plan =>
      setCorner(inserted(before, middle), { ...args, index: index + 1, to: spot(at) });
    return [
      {
        key: `insert ${hole ?? ''} ${index}`,
        kind: 'insert',
        name: `Put a corner after corner ${index + 1} of ${called}`,
        at: middle,
        pull: (before: Plan, pull: Pull) =>
          moved(before, snapCorner(before, id, pull, { before: from, after: to })),
        step: (before, way) => moved(before, shifted(middle, way)),
        press: (before) => inserted(before, middle),
      },
    ];
  });
}
