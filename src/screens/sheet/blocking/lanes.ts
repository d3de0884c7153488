import { type PropLane, propLanes } from '../../../core/form/figure/carrying';
import { type WalkReading, walksOf } from '../../../core/form/figure/walks';
import { flickerShare } from '../../../core/form/flicker';
import { spanOf } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import { dimAt, flickerOf, flickerStretches, isLamp, type Lamp, playedCues } from '../../../core/plan/cues';
import type { Mark, Pass, Performer } from '../../../core/plan/schema/cast';
import type { Flicker } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { markName, marksInTime, secondsOfBeat } from '../../../desk/blocking/things';

/** Somebody at a mark, from its beat until they leave. */
export interface Stay {
  readonly mark: Mark;
  readonly name: string;
  readonly fromSeconds: number;
  /** When they leave; null where they stay to the end, or only turn on the spot for the next mark. */
  readonly leaveSeconds: number | null;
  /** Where the line of the stay ends, seconds; null for the end of the action. */
  readonly untilSeconds: number | null;
}

export interface PerformerLane {
  readonly type: 'performer';
  readonly id: string;
  readonly performer: Performer;
  readonly stays: readonly Stay[];
  readonly walks: readonly WalkReading[];
}

export interface HandsLane {
  readonly type: 'prop';
  readonly id: string;
  readonly lane: PropLane;
  readonly passes: readonly { readonly pass: Pass; readonly seconds: number }[];
}

export interface SetupLane {
  readonly type: 'setup';
  readonly id: string;
  readonly setup: Setup;
  readonly fromSeconds: number;
  readonly toSeconds: number;
  readonly keys: readonly number[];
}

export interface LampLane {
  readonly type: 'lamp';
  readonly id: string;
  readonly lamp: Lamp;
}

export type Lane = PerformerLane | HandsLane | SetupLane | LampLane;

function performerLane(plan: Plan, performer: Performer): PerformerLane {
  const walks = walksOf(performer, plan);
  const marks = marksInTime(plan, performer);
  const stays = marks.map((mark, k): Stay => {
    const fromSeconds = secondsOfBeat(plan, mark.beat);
    const next = marks[k + 1];
    const leaveSeconds = walks.find(({ fromMark }) => fromMark === mark.id)?.leaveSeconds ?? null;
    return {
      mark,
      name: markName(performer, performer.marks.indexOf(mark)),
      fromSeconds,
      leaveSeconds,
      untilSeconds: leaveSeconds ?? (next ? secondsOfBeat(plan, next.beat) : null),
    };
  });
  return { type: 'performer', id: performer.id, performer, stays, walks };
}

function handsLanes(plan: Plan): readonly HandsLane[] {
  return propLanes(plan).map((lane, index) => {
    const passes = (plan.passes ?? []).flatMap((pass) => {
      const seconds = secondsOfBeat(plan, pass.beat);
      const isHere = lane.holds.some(
        (hold, k) =>
          hold.performerId === pass.to &&
          lane.holds[k - 1]?.performerId === pass.from &&
          Math.abs(hold.fromSeconds - seconds) < 1e-6,
      );
      return isHere ? [{ pass, seconds }] : [];
    });
    return { type: 'prop', id: `prop ${index}`, lane, passes };
  });
}

function setupLane(plan: Plan, setup: Setup): SetupLane {
  const [fromSeconds, toSeconds] = spanOf(plan, setup);
  const keys = keysOf(plan, setup).map(({ atSeconds }) => atSeconds);
  return { type: 'setup', id: setup.id, setup, fromSeconds, toSeconds, keys };
}

const changes = (lamp: Lamp): boolean => lamp.cues !== undefined || flickerOf(lamp) !== null;

/**
 * All that has a lane: who plays, what goes from hand to hand, the cameras, and of the lamps those that change by
 * themselves or by a cue and the one that is chosen, or all.
 */
export function lanesOf(plan: Plan, allLamps: boolean, chosenLampId: string | null = null): readonly Lane[] {
  return [
    ...plan.cast.map((performer) => performerLane(plan, performer)),
    ...handsLanes(plan),
    ...plan.setups.map((setup) => setupLane(plan, setup)),
    ...plan.gear
      .filter(isLamp)
      .filter((lamp) => allLamps || changes(lamp) || lamp.id === chosenLampId)
      .map((lamp): LampLane => ({ type: 'lamp', id: lamp.id, lamp })),
  ];
}

/** More changes of level than this along a lane run together. */
const MOST_LEVELS = 2000;

/** How bright a lamp is at a moment, 0..1 of its full output. */
export interface LampLevel {
  readonly seconds: number;
  readonly level: number;
}

/**
 * How bright a lamp is along the clock, as the corners of a line: where it jumps there are two at one moment. Where its
 * flicker plays the line follows it from frame to frame.
 */
export function levelsOf(plan: Plan, lamp: Lamp, from: number, to: number): readonly LampLevel[] {
  const flicker = flickerOf(lamp);
  if (!flicker) return steady(plan, lamp, from, to);
  const levels: LampLevel[] = [];
  let at = from;
  for (const [begins, ends] of flickerStretches(lamp, plan, from, to)) {
    if (begins > at) levels.push(...steady(plan, lamp, at, begins));
    levels.push(...flickering(plan, lamp, flicker, begins, ends));
    at = ends;
  }
  return at < to || levels.length === 0 ? [...levels, ...steady(plan, lamp, at, to)] : levels;
}

function steady(plan: Plan, lamp: Lamp, from: number, to: number): readonly LampLevel[] {
  const corners = playedCues(plan, lamp).flatMap((cue): LampLevel[] => [
    { seconds: cue.fromSeconds, level: cue.fromDim },
    { seconds: cue.untilSeconds, level: cue.untilDim },
  ]);
  return [
    { seconds: from, level: dimAt(lamp, plan, from) },
    ...corners.filter(({ seconds }) => seconds >= from && seconds <= to),
    { seconds: to, level: dimAt(lamp, plan, to) },
  ];
}

function flickering(
  plan: Plan,
  lamp: Lamp,
  flicker: Flicker,
  from: number,
  to: number,
): readonly LampLevel[] {
  const step = Math.max(1 / 24, (to - from) / MOST_LEVELS);
  const levels: LampLevel[] = [];
  for (let k = 0; from + k * step <= to; k += 1) {
    const seconds = from + k * step;
    const level = dimAt(lamp, plan, seconds) * flickerShare(flicker, seconds);
    const before = levels.at(-1);
    if (before?.level === level) continue;
    if (before) levels.push({ seconds, level: before.level });
    levels.push({ seconds, level });
  }
  const last = levels.at(-1);
  return last ? [...levels, { seconds: to, level: last.level }] : levels;
}
