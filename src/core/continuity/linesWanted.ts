import type { Whereabouts } from '../form/figure/whereabouts';
import type { Plan } from '../plan/schema/plan';
import { acos } from '../units/steadyMath';
import { isFramed, type Shot, shotsOf } from './continuityShots';
import { TOGETHER_METRES } from './lineSide';

/** A line that is judged. */
export interface JudgedLine {
  /** Of the plan's lines; null for one that was found. */
  readonly id: string | null;
  readonly pair: readonly [string, string];
  readonly establishedBy: string | null;
}

/** A pair that plays to each other and has no line in the plan. */
export interface WantedLine {
  readonly pair: readonly [string, string];
  /** How long setups that frame one of them have them face each other, added up over the setups, seconds. */
  readonly seconds: number;
}

/** A face turned less than this off the other's counts as turned to it, degrees. Source: common practice, no source */
const FACING_DEGREES = 30;
/** A glance shorter than this makes no line, seconds. Source: common practice, no source */
const LEAST_SECONDS = 1;

const DEGREES = 180 / Math.PI;

/** Whether somebody's face is turned to another's, as seen from above. */
function isTurnedTo(from: Whereabouts, to: Whereabouts): boolean {
  const [x, z] = [to.eyes[0] - from.eyes[0], to.eyes[2] - from.eyes[2]];
  const [gx, , gz] = from.gaze;
  const size = Math.sqrt((x * x + z * z) * (gx * gx + gz * gz));
  return size > 0 && acos((x * gx + z * gz) / size) * DEGREES <= FACING_DEGREES;
}

function areFacing(first: Whereabouts, second: Whereabouts): boolean {
  const [dx, dz] = [second.at[0] - first.at[0], second.at[2] - first.at[2]];
  if (dx * dx + dz * dz < TOGETHER_METRES * TOGETHER_METRES) return false;
  return isTurnedTo(first, second) && isTurnedTo(second, first);
}

interface Facing {
  seconds: number;
  readonly framed: [boolean, boolean];
}

function addFacing(shot: Shot, pair: readonly [string, string], facing: Facing): void {
  const [first, second] = pair.map((id) => shot.seen.get(id) ?? []);
  shot.instants.forEach((seconds, k) => {
    const framed = [isFramed(shot, pair[0], k), isFramed(shot, pair[1], k)];
    const [here, there] = [first[k]?.place, second[k]?.place];
    if (!(framed[0] || framed[1]) || !here || !there || !areFacing(here, there)) return;
    facing.seconds += (shot.instants[k + 1] ?? seconds) - seconds;
    if (framed[0]) facing.framed[0] = true;
    if (framed[1]) facing.framed[1] = true;
  });
}

const isPair = (line: { readonly pair: readonly [string, string] }, a: string, b: string): boolean =>
  line.pair.includes(a) && line.pair.includes(b);

/** Whom a shot frames at all. */
const framedIn = ({ seen }: Shot): ReadonlySet<string> =>
  new Set([...seen].flatMap(([id, looks]) => (looks.some(({ framing }) => framing?.size) ? [id] : [])));

const kept = new WeakMap<Plan, readonly WantedLine[]>();

/**
 * The pairs of a plan that want a line and have none: their faces are turned to each other, for a second at least, in
 * setups that frame both, or one the one and one the other. Those who face each other longest come first. The same list
 * when asked again.
 */
export function linesWanted(plan: Plan): readonly WantedLine[] {
  const known = kept.get(plan);
  if (known) return known;
  const shots = shotsOf(plan).map((shot) => ({ shot, framed: framedIn(shot) }));
  const wanted: WantedLine[] = [];
  plan.cast.forEach((one, place) => {
    for (const other of plan.cast.slice(place + 1)) {
      if ((plan.lines ?? []).some((line) => isPair(line, one.id, other.id))) continue;
      const pair = [one.id, other.id] as const;
      const facing: Facing = { seconds: 0, framed: [false, false] };
      for (const { shot, framed } of shots)
        if (framed.has(one.id) || framed.has(other.id)) addFacing(shot, pair, facing);
      if (facing.seconds >= LEAST_SECONDS && facing.framed[0] && facing.framed[1])
        wanted.push({ pair, seconds: facing.seconds });
    }
  });
  const found = wanted.toSorted((a, b) => b.seconds - a.seconds);
  kept.set(plan, found);
  return found;
}

/**
 * The lines that a plan is judged by: its own. A plan that says nothing of lines is judged by those that it wants, since
 * a pair who play to each other have their line whether somebody wrote it down or not; an empty list says that none
 * is kept.
 */
export function linesOf(plan: Plan): readonly JudgedLine[] {
  if (plan.lines)
    return plan.lines.map(({ id, pair, establishedBy }) => ({
      id,
      pair,
      establishedBy: establishedBy ?? null,
    }));
  return linesWanted(plan).map(({ pair }) => ({ id: null, pair, establishedBy: null }));
}
