import type { Spot } from '../schema/numbers';
import {
  type Constraint,
  constraintsOf,
  isOn,
  meetingOf,
  nearestOn,
  reasonOf,
  straightLine,
  thingsAround,
} from './constraints';
import { alongOf, apart, onLine, SAME_METRES } from './plane';
import type { At, SnapReason, SnapRequest, SnapResult } from './types';

/** What holds lets go only this much farther out. */
const HELD_REACH = 1.35;
/** What holds is preferred by so much of the reach, so that a hand between two things does not flutter. */
const HELD_GAIN = 0.35;
/** A point is sooner meant than a line, two lines that cross sooner than one; shares of the reach. */
const POINT_GAIN = 1;
const CROSSING_GAIN = 0.5;
/** More lines than this are not within reach of one hand. */
const MOST_LINES = 24;
/** Of two meanings as good as each other the first in the order of their keys: always the same one. */
const AS_GOOD = 1e-6;

/** Something that the hand may mean. */
interface Choice {
  readonly at: At;
  readonly keys: readonly string[];
  readonly cost: number;
  readonly why: readonly SnapReason[];
  /** The line that the place may still slide along, by steps of the grid. */
  readonly slides: Extract<Constraint, { shape: 'line' }> | null;
}

/** What was caught, and at what cost in shares of the reach: the lower, the surer. */
export interface Caught extends SnapResult {
  readonly cost: number;
}

/**
 * What the hand means at a place: an end, a crossing, a line or a circle within reach, else nothing. What was held
 * before keeps its hold a little longer, and keeps it for good while the hand is exactly on it.
 */
export function catchNear(request: SnapRequest): Caught | null {
  const choice = choose(choicesOf(request), heldOf(request), request);
  if (!choice) return null;
  const at = slid(choice, request);
  return {
    at: at.spot,
    why: [...choice.why.map((reason) => moved(reason, at.spot)), ...at.why],
    cost: choice.cost,
  };
}

/**
 * Where a place that the hand points at comes to rest, and why: on what is within reach, else on the grid, else where
 * it is. Never farther than the reach (a third more for what is held), or than the grid's own cell.
 */
export function snapSpot(request: SnapRequest): SnapResult {
  const line = request.straight ? straightLine(request) : null;
  if (line) return alongStraight(request, line);
  // Exactly on the corner before, no bearing is meant yet.
  if (request.straight && request.from) return { at: [request.from[0], request.from[1]], why: [] };
  const caught = catchNear(request);
  if (caught) return { at: caught.at, why: caught.why };
  return request.grid === null
    ? { at: [request.at[0], request.at[1]], why: [] }
    : { at: onGrid(request.at, request.grid), why: [GRID] };
}

const GRID: SnapReason = { kind: 'grid', word: 'on the grid', key: 'grid' };

/** Steps are counted, then multiplied: what lies on the grid stays where it is. Micrometres leave no noise behind. */
const stepped = (metres: number, step: number): number =>
  Math.round(Math.round(metres / step) * step * 1e6) / 1e6 + 0;

const onGrid = ([x, z]: At, grid: number): Spot => [stepped(x, grid), stepped(z, grid)];

const heldOf = ({ held }: SnapRequest): readonly string[] => (held ?? []).filter((key) => key !== GRID.key);

function moved(reason: SnapReason, to: At): SnapReason {
  return reason.guide ? { ...reason, guide: [reason.guide[0], to] } : reason;
}

function choicesOf(request: SnapRequest): Choice[] {
  const { at, reach, from } = request;
  const held = new Set(heldOf(request));
  const reachOf = (key: string): number => (held.has(key) ? reach * HELD_REACH : reach);
  const choices: Choice[] = [];
  const add = (place: At, parts: Omit<Choice, 'at' | 'cost'>, gain: number): void => {
    const away = apart(place, at);
    const isHeld = held.size > 0 && parts.keys.every((key) => held.has(key));
    if (away > (isHeld ? reach * HELD_REACH : reach)) return;
    // A leg of no length is never meant.
    if (from && apart(place, from) < SAME_METRES) return;
    choices.push({ at: place, cost: away / reach - gain - (isHeld ? HELD_GAIN : 0), ...parts });
  };

  const things = thingsAround(request);
  for (const point of things.points) {
    if (apart(point.at, at) > reachOf(point.key)) continue;
    const why: SnapReason = { kind: point.kind, word: point.word, key: point.key };
    add(
      point.at,
      { keys: [point.key], why: [why], slides: null },
      POINT_GAIN + (point.kind === 'end' ? 0.1 : 0),
    );
  }
  const lines = constraintsOf(request, things, reachOf);
  lines.sort(
    (a, b) =>
      Number(held.has(b.key)) - Number(held.has(a.key)) || a.rank - b.rank || (a.key < b.key ? -1 : 1),
  );
  lines.splice(MOST_LINES);
  for (const [index, line] of lines.entries()) {
    const nearest = nearestOn(line, at);
    if (nearest) {
      const slides = line.shape === 'line' ? line : null;
      add(nearest, { keys: [line.key], why: [reasonOf(line, nearest)], slides }, -line.rank);
    }
    for (const other of lines.slice(index + 1)) {
      const place = meetingOf(line, other, at);
      if (!place) continue;
      const why = [reasonOf(line, place), reasonOf(other, place)];
      const gain = CROSSING_GAIN - (line.rank + other.rank) / 2;
      add(place, { keys: [line.key, other.key], why, slides: null }, gain);
    }
  }
  return choices;
}

function choose(choices: readonly Choice[], held: readonly string[], { at }: SnapRequest): Choice | null {
  const kept = choices.find(
    ({ keys, at: place }) =>
      keys.length === held.length &&
      keys.every((key) => held.includes(key)) &&
      apart(place, at) < SAME_METRES,
  );
  if (kept) return kept;
  const nameOf = ({ keys }: Choice): string => keys.join(' ');
  return choices.reduce<Choice | null>((best, each) => {
    if (!best || each.cost < best.cost - AS_GOOD) return each;
    return each.cost < best.cost + AS_GOOD && nameOf(each) < nameOf(best) ? each : best;
  }, null);
}

/** On a line alone the place goes by steps: from the corner before where the line runs through it, else from its own start. */
function slid({ at, slides }: Choice, request: SnapRequest): { spot: Spot; why: readonly SnapReason[] } {
  const spot: Spot = [at[0], at[1]];
  if (!slides || request.grid === null) return { spot, why: [] };
  const { from } = request;
  const start =
    from && isOn({ ...slides, least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }, from)
      ? from
      : slides.from;
  const along = stepped(alongOf(start, slides.way, at), request.grid);
  const place = onLine(start, slides.way, along);
  const leaves = !isOn(slides, place) || (from && apart(place, from) < SAME_METRES);
  return leaves ? { spot, why: [] } : { spot: place, why: [GRID] };
}

/** Along a bearing that is held: where it meets what is within reach, else by steps from its corner. */
function alongStraight(request: SnapRequest, line: Extract<Constraint, { shape: 'line' }>): SnapResult {
  const foot = nearestOn(line, request.at) ?? line.from;
  const here = { ...request, at: foot };
  const held = new Set(request.held ?? []);
  const reachOf = (key: string): number => (held.has(key) ? request.reach * HELD_REACH : request.reach);
  const across = constraintsOf({ ...here, square: [] }, thingsAround(here), reachOf);
  const crossings = across.flatMap((other) => {
    const place = meetingOf(line, other, foot);
    const away = place ? apart(place, foot) : Number.POSITIVE_INFINITY;
    return place && away <= reachOf(other.key) && apart(place, line.from) >= SAME_METRES
      ? [
          {
            place,
            why: reasonOf(other, place),
            cost: away / request.reach + other.rank - (held.has(other.key) ? HELD_GAIN : 0),
          },
        ]
      : [];
  });
  crossings.sort((a, b) => a.cost - b.cost || (a.why.key < b.why.key ? -1 : 1));
  const exact = crossings.find(({ place, why }) => held.has(why.key) && apart(place, foot) < SAME_METRES);
  const best = exact ?? crossings[0];
  if (best) return { at: [best.place[0], best.place[1]], why: [reasonOf(line, best.place), best.why] };
  const along = alongOf(line.from, line.way, foot);
  const place = onLine(line.from, line.way, request.grid === null ? along : stepped(along, request.grid));
  return { at: place, why: request.grid === null ? [reasonOf(line, place)] : [reasonOf(line, place), GRID] };
}
