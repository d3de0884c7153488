import type { Cue, Flicker, Gear } from './schema/gear';
import type { Plan } from './schema/plan';

/** What shines by itself, and can be dimmed. */
export type Lamp = Extract<Gear, { kind: 'head' | 'practical' | 'bulb string' }>;

export const isLamp = (gear: Gear): gear is Lamp =>
  gear.kind === 'head' || gear.kind === 'practical' || gear.kind === 'bulb string';

type WithBeats = Pick<Plan, 'beats'>;

/** When a cue begins, seconds on the action's clock; one on a beat that the plan does not have counts from 0. */
export const secondsOfCue = ({ beats }: WithBeats, { atSeconds, beat }: Cue): number =>
  atSeconds + (beat === undefined ? 0 : (beats.find(({ id }) => id === beat)?.atSeconds ?? 0));

/** A cue that dims, begun somewhere on the clock, with where it begins and ends; seconds and shares of full output. */
export interface PlayedCue {
  /** Its place in the lamp's list, from 0. */
  readonly index: number;
  readonly fromSeconds: number;
  readonly fromDim: number;
  /** When it is done, or the next cue takes over. */
  readonly untilSeconds: number;
  readonly untilDim: number;
}

type Dimmed = Pick<Lamp, 'dim' | 'cues'>;
type Cued = Pick<Lamp, 'cues'>;

const kept = new WeakMap<
  object,
  { readonly beats: Plan['beats']; readonly dim: number; readonly played: readonly PlayedCue[] }
>();

/** Cues in the order of the clock; of those at one moment, in the order of the list, so that the last has its way. */
const inTime = (plan: WithBeats, cues: readonly Cue[]) =>
  cues
    .map((cue, index) => ({ cue, index, fromSeconds: secondsOfCue(plan, cue) }))
    .toSorted((a, b) => a.fromSeconds - b.fromSeconds);

/** Where a fade from one level to another has come to. */
const along = (from: number, to: number, share: number): number => from + (to - from) * share;

/**
 * A lamp's cues that dim it as they play, in the order of the clock; of those at one moment, in the order of the list,
 * so that the last has its way. A cue that begins while the one before it still fades takes over from the level that it
 * finds. One that only begins or ends a flicker lets a fade go on.
 */
export function playedCues(plan: WithBeats, { dim, cues }: Dimmed): readonly PlayedCue[] {
  if (!cues || cues.length === 0) return [];
  const known = kept.get(cues);
  if (known && known.beats === plan.beats && known.dim === dim) return known.played;
  const dimming = inTime(plan, cues).flatMap(({ cue: { dim: toDim, fadeSeconds }, ...rest }) =>
    toDim === undefined ? [] : [{ ...rest, toDim, fadeSeconds }],
  );
  let level = dim;
  const played = dimming.map(({ toDim, fadeSeconds, index, fromSeconds }, k): PlayedCue => {
    const room = (dimming[k + 1]?.fromSeconds ?? Number.POSITIVE_INFINITY) - fromSeconds;
    const isWhole = fadeSeconds <= room;
    const fromDim = level;
    level = isWhole ? toDim : along(fromDim, toDim, room / fadeSeconds);
    const untilSeconds = fromSeconds + Math.min(fadeSeconds, room);
    return { index, fromSeconds, fromDim, untilSeconds, untilDim: level };
  });
  kept.set(cues, { beats: plan.beats, dim, played });
  return played;
}

/**
 * The share of its full output that a lamp is dimmed to at a moment of the action's clock, 0..1: its own `dim` until
 * the first cue, along a straight line while one fades, and what the last one came to. A cue holds from its very
 * instant on. Straight in output, not in what the eye sees: common practice, no source
 */
export function dimAt(lamp: Dimmed, plan: WithBeats, seconds: number): number {
  const cue = playedCues(plan, lamp).findLast(({ fromSeconds }) => fromSeconds <= seconds);
  if (!cue) return lamp.dim;
  const { fromSeconds, untilSeconds, fromDim, untilDim } = cue;
  if (seconds >= untilSeconds) return untilDim;
  return along(fromDim, untilDim, (seconds - fromSeconds) / (untilSeconds - fromSeconds));
}

/** Whether a lamp gives any light at some moment of the action. */
export const isEverLit = ({ dim, cues }: Dimmed): boolean =>
  dim > 0 || (cues ?? []).some((cue) => cue.dim !== undefined && cue.dim > 0);

/** The pattern of darkenings that a lamp has; null for one that has none. */
export const flickerOf = (lamp: Lamp): Flicker | null =>
  lamp.kind === 'practical' ? (lamp.flicker ?? null) : null;

/** Moments at which a lamp's flicker begins or ends, in the order of the clock, the first when it is set to. */
function flickerTurns(plan: WithBeats, { cues }: Cued, atFirst: boolean) {
  const turns = inTime(plan, cues ?? []).flatMap(({ cue: { flickers }, fromSeconds }) =>
    flickers === undefined ? [] : [{ fromSeconds, flickers }],
  );
  return [{ fromSeconds: Number.NEGATIVE_INFINITY, flickers: atFirst }, ...turns];
}

/**
 * Whether a lamp's own flicker plays at a moment of the action's clock: until the first cue about it as the lamp is set,
 * then as the last one has it, from its very instant on. Never without a pattern.
 */
export function flickersAt(lamp: Lamp, plan: WithBeats, seconds: number): boolean {
  const flicker = flickerOf(lamp);
  if (!flicker) return false;
  const turn = flickerTurns(plan, lamp, !flicker.waits).findLast(({ fromSeconds }) => fromSeconds <= seconds);
  return turn?.flickers ?? false;
}

/** A stretch of the action's clock, seconds. */
export type Stretch = readonly [from: number, until: number];

/** The stretches between two moments of the clock in which a lamp flickers, in order, none next to another. */
export function flickerStretches(
  lamp: Lamp,
  plan: WithBeats,
  fromSeconds: number,
  untilSeconds: number,
): readonly Stretch[] {
  const flicker = flickerOf(lamp);
  if (!flicker) return [];
  const turns = flickerTurns(plan, lamp, !flicker.waits);
  const found: Stretch[] = [];
  for (const [k, { fromSeconds: begins, flickers }] of turns.entries()) {
    const from = Math.max(fromSeconds, begins);
    const until = Math.min(untilSeconds, turns[k + 1]?.fromSeconds ?? untilSeconds);
    if (!flickers || until <= from) continue;
    const before = found.at(-1);
    if (before?.[1] === from) found[found.length - 1] = [before[0], until];
    else found.push([from, until]);
  }
  return found;
}

/** A lamp whose cues count from no beat any more, but lie where they were on the clock. */
export function cuesOnClock<Item extends Gear>(gear: Item, plan: WithBeats): Item {
  if (!isLamp(gear) || !gear.cues?.some(({ beat }) => beat !== undefined)) return gear;
  const cues = gear.cues.map((cue): Cue => {
    const { beat: _, ...free } = cue;
    return { ...free, atSeconds: Math.min(3600, secondsOfCue(plan, cue)) };
  });
  return { ...gear, cues };
}
