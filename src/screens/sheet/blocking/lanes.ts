import { type PropLane, propLanes } from '../../../core/form/figure/carrying';
import { type WalkReading, walksOf } from '../../../core/form/figure/walks';
import { flickerShare } from '../../../core/form/flicker';
import { spanOf } from '../../../core/optics/camera';
import { keysOf } from '../../../core/optics/cameraKey';
import type { Mark, Pass, Performer } from '../../../core/plan/schema/cast';
import type { Gear } from '../../../core/plan/schema/gear';
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

type Lamp = Extract<Gear, { kind: 'head' | 'practical' | 'bulb string' }>;

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

const isLamp = (gear: Gear): gear is Lamp =>
  gear.kind === 'head' || gear.kind === 'practical' || gear.kind === 'bulb string';
const flickers = (lamp: Lamp): boolean => lamp.kind === 'practical' && lamp.flicker !== undefined;

/** All that has a lane: who plays, what goes from hand to hand, the cameras, and the lamps that flicker, or all lamps. */
export function lanesOf(plan: Plan, allLamps: boolean): readonly Lane[] {
  return [
    ...plan.cast.map((performer) => performerLane(plan, performer)),
    ...handsLanes(plan),
    ...plan.setups.map((setup) => setupLane(plan, setup)),
    ...plan.gear
      .filter(isLamp)
      .filter((lamp) => allLamps || flickers(lamp))
      .map((lamp): LampLane => ({ type: 'lamp', id: lamp.id, lamp })),
  ];
}

/** More changes of level than this along a lane run together. */
const MOST_LEVELS = 2000;

/** How bright a lamp is along the clock: moments at which its level changes, with the level from there on, 0..1. */
export function levelsOf(
  lamp: Lamp,
  from: number,
  to: number,
): readonly { readonly seconds: number; readonly level: number }[] {
  if (lamp.kind !== 'practical' || !lamp.flicker) return [{ seconds: from, level: lamp.dim }];
  const step = Math.max(1 / 24, (to - from) / MOST_LEVELS);
  const levels: { seconds: number; level: number }[] = [];
  for (let k = 0; from + k * step <= to; k += 1) {
    const seconds = from + k * step;
    const level = lamp.dim * flickerShare(lamp.flicker, seconds);
    if (levels.at(-1)?.level !== level) levels.push({ seconds, level });
  }
  return levels;
}
