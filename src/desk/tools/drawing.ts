import { socketNear } from '../../core/kit/palette/makeItem';
import { MOST } from '../../core/plan/edits/limits';
import { tidySpot } from '../../core/plan/edits/tidy';
import { bearingOf, metresBetween, spotFrom } from '../../core/plan/runs';
import type { Spot } from '../../core/plan/schema/numbers';
import type { SnapReason, SnapResult } from '../../core/plan/snap/types';
import { chooseMade } from '../chosenArea';
import { liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { caught, drawsCable, gridStep } from './catching';
import { drawnInto, entryOf, spotsWithNext } from './making';
import { runNear } from './openings';
import { ONE_CORNER_METRES, refusedEnd, refusedLeg } from './refusals';
import { type Aim, EMPTY_STROKE, HAND, type Stroke, type Tool, toolStore } from './toolStore';

/** So near to a plug a corner is meant for it: farther off the cable runs past, metres. */
const PLUGS_WITHIN_METRES = 0.1;

/** The gesture that shows a draft is told from a drag by this id. */
const DRAFT = 'draft';

const state = () => toolStore.getState();
const strokeNow = (): Stroke => state().stroke ?? EMPTY_STROKE;

/** Takes a tool into the hand; what was being drawn with another is dropped. */
export function pickTool(tool: Tool): void {
  showDraft(null);
  liveStore.getState().setPlaying(false);
  toolStore.setState({ tool, stroke: null, entry: null, refusal: null, asksDistance: null, fields: {} });
}

/** Puts the tool down: the bare hand again. */
export const putDown = (): void => pickTool(HAND);

/**
 * Points at a place on the roof, metres, or nowhere: the next corner would be there, or where it snaps to. The plan is
 * shown as it would be.
 */
export function pointAt(spot: Spot | null, aim: Aim, byKeys = false): void {
  const { tool, asksDistance } = state();
  // What is asked is answered first.
  if (tool.type === 'hand' || asksDistance) return;
  aimAt({ ...strokeNow(), raw: spot, aim, byKeys });
}

/** Holds the leg to a length, metres, or lets it go again; an opening takes it for its width. */
export function typeLength(metres: number | null): void {
  aimAt({ ...strokeNow(), typedLengthMetres: metres });
}

/** Holds the leg to a bearing, degrees, or lets it go again; what is put down faces that way. */
export function typeBearing(degrees: number | null): void {
  aimAt({ ...strokeNow(), typedBearingDegrees: degrees });
}

/** Gives what is being drawn other values in some of its fields, as `reshapeItem` takes them. */
export function typeFields(fields: Readonly<Record<string, unknown>>): void {
  toolStore.setState(({ fields: before }) => ({ fields: { ...before, ...fields } }));
  aimAt(strokeNow());
}

/** Begins a press that may be dragged: to turn what is put, to widen an opening; what is drawn takes its corner at once. */
export function pressDown(): void {
  const { tool, stroke } = state();
  if (tool.type === 'hand' || !stroke?.next) return;
  if (tool.type === 'put' || tool.type === 'opening')
    toolStore.setState({ stroke: { ...stroke, held: stroke.next } });
  else press();
}

/** Ends a press: one that was dragged takes another corner where it is let go. */
export function pressUp(dragged: boolean): void {
  const { tool, stroke } = state();
  const atOnce = tool.type === 'put' || tool.type === 'opening';
  if (!atOnce && !(dragged && (stroke?.corners.length ?? 0) > 0)) return;
  press();
}

/** Gives up a press that was begun, without taking anything. */
export function letGo(): void {
  const { stroke } = state();
  if (stroke?.held) aimAt({ ...stroke, held: null });
}

/** Takes the place that is pointed at: puts the thing there, or the next corner; the first corner again closes. */
export function press(): void {
  const { tool, stroke } = state();
  if (tool.type === 'hand' || !stroke?.next) return;
  toolStore.setState({ refusal: null });
  if (tool.type === 'put' || tool.type === 'opening') {
    commit([stroke.next], false);
    return;
  }
  if (tool.type === 'place') {
    const refusal = tool.wanted.take(stroke.next);
    if (refusal === null) putDown();
    else toolStore.setState({ refusal });
    return;
  }
  const entry = entryOf(tool);
  const [first] = stroke.corners;
  const last = stroke.corners.at(-1);
  const closes = (entry?.how === 'run' || entry?.how === 'outline') && stroke.corners.length >= 3;
  if (first && closes && metresBetween(first, stroke.next) < ONE_CORNER_METRES) {
    endStroke(true);
    return;
  }
  const refusal = last ? refusedLeg(last, stroke.next) : null;
  if (refusal !== null) {
    toolStore.setState({ refusal });
    return;
  }
  const corners = [...stroke.corners, stroke.next];
  const [from, to] = corners;
  const endsAtTwo = tool.type === 'tape' || tool.type === 'two points' || entry?.how === 'ends';
  if (endsAtTwo && from && to) {
    if (tool.type === 'two points') {
      const asksDistance = { purpose: tool.purpose, from, to };
      toolStore.setState({ asksDistance, stroke: null, entry: { field: 'distance', text: '', fault: null } });
    } else commit(corners, false);
    return;
  }
  toolStore.setState({ entry: null });
  if (plugsIn(tool, stroke, corners)) commit(corners, false);
  else showCorners({ ...stroke, corners });
}

/** A cable that reaches something else to plug into ends there, unless the hand catches on nothing. */
function plugsIn(tool: Tool, { aim }: Stroke, corners: readonly Spot[]): boolean {
  const [first, last] = [corners[0], corners.at(-1)];
  if (!drawsCable(tool) || aim.free || corners.length < 2 || !first || !last) return false;
  const { plan } = planStore.getState();
  const end = socketNear(plan, last, PLUGS_WITHIN_METRES);
  return end !== null && end !== socketNear(plan, first, PLUGS_WITHIN_METRES);
}

/** A corner was taken: nothing is meant by the next one until the hand moves, but the keys' crosshair stays in sight. */
function showCorners(stroke: Stroke): void {
  const last = stroke.byKeys ? (stroke.corners.at(-1) ?? null) : null;
  aimAt(
    { ...stroke, raw: last ?? stroke.raw, typedLengthMetres: null, typedBearingDegrees: null, why: [] },
    last,
  );
}

/** Ends what is drawn at its last corner; `closed` takes it back to the first one. What cannot be says why and stays. */
export function endStroke(closed?: boolean): void {
  const { tool, stroke } = state();
  const entry = entryOf(tool);
  if (!entry || tool.type !== 'draw' || !stroke || stroke.corners.length === 0) return;
  const closes = entry.how === 'outline' || (closed === true && entry.how === 'run');
  const refusal = refusedEnd(entry, stroke.corners, closes);
  if (refusal !== null) toolStore.setState({ refusal, entry: null });
  else commit(stroke.corners, closes);
}

/** Drops what is being drawn; the tool stays in the hand. Says whether there was anything. */
export function dropStroke(): boolean {
  const { stroke, asksDistance } = state();
  const had = (stroke !== null && stroke.corners.length > 0) || asksDistance !== null;
  showDraft(null);
  toolStore.setState({ stroke: null, entry: null, refusal: null, asksDistance: null });
  return had;
}

/** Takes the last corner back. */
export function takeBackCorner(): void {
  const stroke = strokeNow();
  toolStore.setState({ refusal: null, entry: null });
  if (stroke.corners.length === 0) return;
  const corners = stroke.corners.slice(0, -1);
  aimAt({ ...stroke, corners, typedLengthMetres: null, typedBearingDegrees: null, why: [] });
}

/** Escape: gives up what is typed, then what is drawn, then the tool. */
export function stepBack(): void {
  const { entry } = state();
  if (entry && entry.field !== 'distance') {
    toolStore.setState({ entry: null });
    aimAt({ ...strokeNow(), typedLengthMetres: null, typedBearingDegrees: null });
  } else if (!dropStroke()) putDown();
}

/** Works out where the stroke's next corner is, unless it is `known`, and shows the plan with it. */
function aimAt(stroke: Stroke, known?: Spot | null): void {
  const { at, why } = known === undefined ? nextOf(stroke) : { at: known, why: [] };
  const next = at && tidySpot(at);
  toolStore.setState({ stroke: { ...stroke, next, why } });
  const { tool } = state();
  const { plan } = planStore.getState();
  if (tool.type === 'tape' || tool.type === 'two points' || tool.type === 'place') return;
  const closed = closesAt(stroke, next);
  const spots = closed ? stroke.corners : spotsWithNext({ ...stroke, next });
  showDraft(
    next || stroke.corners.length > 1 ? (drawnInto(plan, state(), spots, closed)?.plan ?? null) : null,
  );
}

const closesAt = ({ corners }: Stroke, next: Spot | null): boolean =>
  next !== null && corners.length >= 3 && metresBetween(corners[0], next) < ONE_CORNER_METRES;

/** The place of the next corner: as it is typed, else where the hand's place comes to rest. */
function nextOf(stroke: Stroke): { readonly at: Spot | null; readonly why: readonly SnapReason[] } {
  const { tool } = state();
  const { raw, corners, typedLengthMetres: metres, typedBearingDegrees: degrees } = stroke;
  const from = corners.at(-1);
  const isLeg = from && tool.type !== 'put' && tool.type !== 'opening';
  if (isLeg && metres !== null && degrees !== null) return { at: spotFrom(from, degrees, metres), why: [] };
  if (tool.type === 'put' && stroke.held) return { at: stroke.held, why: [] };
  if (!raw) return { at: null, why: [] };
  const rest = tool.type === 'opening' ? { at: raw, why: [] } : caught(tool, stroke, raw);
  if (!isLeg) return rest;
  if (metres !== null) {
    const at = spotFrom(from, aheadOf(corners, rest.at), metres);
    return { at, why: stillTrue(rest, from, at) };
  }
  if (degrees === null) return rest;
  const ahead = spotFrom([0, 0], degrees, 1);
  const along = (raw[0] - from[0]) * ahead[0] + (raw[1] - from[1]) * ahead[1];
  const step = stroke.aim.free ? null : gridStep();
  const whole = step === null ? along : Math.round(along / step) * step;
  return { at: spotFrom(from, degrees, Math.max(whole, step ?? 0)), why: [] };
}

/** The bearing from the last corner to a place; where that is the corner itself, on the way of the leg before. */
function aheadOf(corners: readonly Spot[], to: Spot): number {
  const from = corners.at(-1) ?? to;
  const before = corners.at(-2);
  if (metresBetween(from, to) >= ONE_CORNER_METRES) return bearingOf(from, to);
  return before ? bearingOf(before, from) : 90;
}

/** Of the reasons for a place those that hold for another one on the same bearing. */
function stillTrue({ why }: SnapResult, from: Spot, at: Spot): readonly SnapReason[] {
  const way = bearingOf(from, at);
  return why.flatMap((reason): SnapReason[] => {
    const start = reason.guide?.[0];
    if (!start) return [];
    const isOnLeg =
      metresBetween([...start], from) < ONE_CORNER_METRES ||
      Math.abs(Math.abs(((bearingOf([...start], from) - way + 540) % 360) - 180) % 180) < 1e-6;
    return isOnLeg ? [{ ...reason, guide: [start, at] }] : [];
  });
}

/** Shows a plan with a draft in it, or none. */
function showDraft(draft: ReturnType<typeof planStore.getState>['plan'] | null): void {
  const { gesture, beginGesture, moveGesture, dropGesture } = liveStore.getState();
  if (!draft) {
    if (gesture?.itemId === DRAFT) dropGesture();
    return;
  }
  if (gesture?.itemId !== DRAFT) beginGesture(DRAFT);
  moveGesture(draft);
}

/** Makes one step of the history of what is drawn, and chooses what it made. What is refused says why and stays. */
function commit(spots: readonly Spot[], closed: boolean): void {
  const stroke = strokeNow();
  const { plan, edit } = planStore.getState();
  const drawn = drawnInto(plan, state(), spots, closed);
  if (!drawn || drawn.plan === plan) {
    toolStore.setState({ refusal: refusedHere(stroke) });
    return;
  }
  const faults = edit(drawn.name, () => drawn.plan);
  const [fault] = faults;
  if (fault) {
    toolStore.setState({ refusal: fault.sentence });
    return;
  }
  showDraft(null);
  if (drawn.id !== null) chooseMade(drawn.plan, drawn.id);
  // The hand stays where it is, with nothing drawn: the next one begins there.
  const { next, raw, aim, byKeys } = stroke;
  toolStore.setState({ stroke: { ...EMPTY_STROKE, next, raw, aim, byKeys }, entry: null });
}

function refusedHere(stroke: Stroke): string {
  const { tool } = state();
  if (tool.type === 'opening') {
    return 'An opening has to fit into its run. Type a smaller width, or press a longer run.';
  }
  const entry = entryOf(tool);
  if (entry?.id === 'deck-hole')
    return 'A hole lies inside one deck. Draw it within the deck and clear of its other holes.';
  if (
    entry &&
    stroke.corners.length > MOST.areaCorners &&
    (entry.id === 'wet-area' || entry.id === 'dry-area')
  )
    return `A wet or a dry area has at most ${MOST.areaCorners} corners. Take some back, or draw two of them.`;
  return stroke.corners.length > 0
    ? 'This cannot be made as it is drawn. Take a corner back and try another way.'
    : 'There is no room for this here. Press elsewhere on the roof.';
}

/** Picks the run under the hand for the opening: whatever wall, parapet or fence is nearest. */
export function aimOpening(spot: Spot, reachMetres: number): void {
  const { tool } = state();
  if (tool.type !== 'opening') return;
  const run = runNear(planStore.getState().plan, spot, reachMetres);
  if (run && run.id !== tool.itemId) toolStore.setState({ tool: { ...tool, itemId: run.id } });
}
