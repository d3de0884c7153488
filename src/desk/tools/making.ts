import type { PaletteEntry } from '../../core/kit/palette/entry';
import { makeItem, paletteEntryOf } from '../../core/kit/palette/makeItem';
import { addOpening } from '../../core/plan/edits/addOpening';
import { addTape } from '../../core/plan/edits/addTape';
import { reshapeItem } from '../../core/plan/edits/reshapeItem';
import { itemOf } from '../../core/plan/items';
import { bearingOf, metresBetween } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import { openedRun, openingAt } from './openings';
import { aThing } from './refusals';
import type { Stroke, Tool, ToolState } from './toolStore';

/** A plan with what is drawn in it. */
export interface Drawn {
  readonly plan: Plan;
  /** What is chosen afterwards; null for what cannot be. */
  readonly id: string | null;
  /** What the history calls it. */
  readonly name: string;
}

/** The palette's entry that a tool puts or draws; null for the others. */
export function entryOf(tool: Tool): PaletteEntry | null {
  return tool.type === 'put' || tool.type === 'draw' ? paletteEntryOf(tool.entryId) : null;
}

/** Places that a stroke takes up, with the one that the hand points at. */
export const spotsWithNext = ({ corners, next }: Stroke): readonly Spot[] =>
  next ? [...corners, next] : corners;

/**
 * The plan with what is being drawn, through `spots`; null while there is too little of it.
 * @param closed whether a run goes back to its first corner
 */
export function drawnInto(
  plan: Plan,
  state: Pick<ToolState, 'tool' | 'stroke' | 'fields'>,
  spots: readonly Spot[],
  closed: boolean,
): Drawn | null {
  const { tool, stroke, fields } = state;
  const entry = entryOf(tool);
  if (tool.type === 'tape') {
    const [from, to] = spots;
    return from && to ? { plan: addTape(plan, { from, to }), id: null, name: 'lay a tape' } : null;
  }
  if (tool.type === 'opening') return opened(plan, tool.itemId, stroke, spots.at(-1));
  if (!entry || (tool.type === 'draw' && spots.length < 2)) return null;
  const heading = tool.type === 'put' ? headingOf(stroke) : null;
  const made = makeItem(plan, entry.id, {
    spots: tool.type === 'put' ? spots.slice(-1) : spots,
    closed,
    ...(heading === null ? {} : { headingDegrees: heading }),
  });
  if (!made) return null;
  // What was cut into was there before: the fields are meant for what is new.
  const isNew = itemOf(plan, made.id) === null;
  const shaped = isNew ? reshapeItem(made.plan, { id: made.id, patch: fields }) : made.plan;
  const verb = tool.type === 'put' ? 'put' : 'draw';
  return { plan: shaped, id: made.id, name: `${verb} ${aThing(entry)}` };
}

/** Which way a thing faces that is put: as it was typed, else towards where the press was dragged. */
function headingOf(stroke: Stroke | null): number | null {
  if (!stroke) return null;
  const { typedBearingDegrees, held, raw, aim } = stroke;
  if (typedBearingDegrees !== null) return typedBearingDegrees;
  if (!held || !raw || metresBetween(held, raw) <= aim.reachMetres) return null;
  const step = aim.free ? 1 : aim.straight ? 45 : 5;
  return (Math.round(bearingOf(held, raw) / step) * step) % 360;
}

function opened(plan: Plan, itemId: string, stroke: Stroke | null, at: Spot | undefined): Drawn | null {
  const run = openedRun(plan, itemId);
  const opening =
    run &&
    at &&
    openingAt(run, at, { from: stroke?.held ?? null, widthMetres: stroke?.typedLengthMetres ?? null });
  if (!opening) return null;
  const { alongMetres, widthMetres, sillMetres, heightMetres } = opening;
  const after = addOpening(plan, { id: itemId, alongMetres, widthMetres, sillMetres, heightMetres });
  return { plan: after, id: itemId, name: 'make an opening' };
}
