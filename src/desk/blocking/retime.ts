import { spanOf } from '../../core/optics/camera';
import { keysOf } from '../../core/optics/cameraKey';
import { beatRange } from '../../core/plan/edits/beatRange';
import { changeBeat } from '../../core/plan/edits/changeBeat';
import { changeMark } from '../../core/plan/edits/changeMark';
import { changePass } from '../../core/plan/edits/changePass';
import { changeSetup } from '../../core/plan/edits/changeSetup';
import type { Beat, Mark, Performer } from '../../core/plan/schema/cast';
import type { Plan } from '../../core/plan/schema/plan';
import { momentOfCue, retimedCue, roomOfCue } from './retimeCue';
import { retimed } from './retimeKey';
import { type Caught, FRAME_SECONDS, nearestBeat, snapTime, tidySeconds } from './snapTime';
import { beatsInTime, markIn, marksInTime, secondsOfBeat, type Timed } from './things';

/** The clock of a plan ends here, seconds. */
const LAST_SECONDS = 3600;

/** When a thing is, on the action's clock. */
export function momentOf(plan: Plan, thing: Timed): number {
  switch (thing.type) {
    case 'beat':
      return secondsOfBeat(plan, thing.beatId);
    case 'mark': {
      const found = markIn(plan, thing);
      return found ? secondsOfBeat(plan, found.mark.beat) : 0;
    }
    case 'hold': {
      const found = markIn(plan, thing);
      return found ? secondsOfBeat(plan, found.mark.beat) + found.mark.holdSeconds : 0;
    }
    case 'pass':
      return secondsOfBeat(plan, plan.passes?.find(({ id }) => id === thing.passId)?.beat ?? '');
    case 'span': {
      const setup = plan.setups.find(({ id }) => id === thing.setupId);
      return setup ? secondsOfBeat(plan, setup.span[thing.end]) : 0;
    }
    case 'key': {
      const setup = plan.setups.find(({ id }) => id === thing.setupId);
      return setup ? (keysOf(plan, setup)[thing.keyIndex]?.atSeconds ?? 0) : 0;
    }
    case 'cue':
    case 'fade':
      return momentOfCue(plan, thing);
  }
}

/** The marks before and after one of a performer's, by the clock. */
function besides(plan: Plan, performer: Performer, mark: Mark): readonly [Mark | null, Mark | null] {
  const marks = marksInTime(plan, performer);
  const place = marks.indexOf(mark);
  return [marks[place - 1] ?? null, marks[place + 1] ?? null];
}

const secondsOrNull = (plan: Plan, mark: Mark | null): number | null =>
  mark ? secondsOfBeat(plan, mark.beat) : null;

/** The beats that a thing which lies on a beat may go to. */
function beatsFor(plan: Plan, thing: Timed): readonly Beat[] {
  const beats = beatsInTime(plan);
  if (thing.type === 'mark') {
    const found = markIn(plan, thing);
    if (!found) return [];
    const [before, after] = besides(plan, found.performer, found.mark).map((mark) =>
      secondsOrNull(plan, mark),
    );
    return beats.filter(
      ({ id, atSeconds }) =>
        id === found.mark.beat ||
        ((before === null || atSeconds > before) && (after === null || atSeconds < after)),
    );
  }
  if (thing.type === 'span') {
    const setup = plan.setups.find(({ id }) => id === thing.setupId);
    if (!setup) return [];
    const [from, to] = spanOf(plan, setup);
    return beats.filter(({ atSeconds }) => (thing.end === 'from' ? atSeconds < to : atSeconds > from));
  }
  return beats;
}

/** Between which moments a thing may go, seconds. */
export function roomOf(plan: Plan, thing: Timed, ripples: boolean): readonly [number, number] {
  const beats = beatsFor(plan, thing);
  if (thing.type === 'beat') {
    const place = beats.findIndex(({ id }) => id === thing.beatId);
    const next = ripples ? undefined : beats[place + 1];
    const [earliest, latest] = beatRange(plan, { beatId: thing.beatId, ripple: ripples }) ?? [
      0,
      LAST_SECONDS,
    ];
    const before = beats[place - 1]?.atSeconds ?? 0;
    return [Math.max(before, earliest), Math.min(next?.atSeconds ?? LAST_SECONDS, latest)];
  }
  if (thing.type === 'hold') {
    const found = markIn(plan, thing);
    if (!found) return [0, 0];
    const [, after] = besides(plan, found.performer, found.mark);
    return [secondsOfBeat(plan, found.mark.beat), secondsOrNull(plan, after) ?? LAST_SECONDS];
  }
  if (thing.type === 'key') {
    const setup = plan.setups.find(({ id }) => id === thing.setupId);
    return setup ? spanOf(plan, setup) : [0, 0];
  }
  if (thing.type === 'cue' || thing.type === 'fade') return roomOfCue(plan, thing);
  return [beats[0]?.atSeconds ?? 0, beats.at(-1)?.atSeconds ?? 0];
}

/** A plan with a thing at another moment, and what the moment caught on. */
export interface Retimed {
  readonly plan: Plan;
  readonly seconds: number;
  readonly caught: Caught | null;
}

/** The id of the beat that a thing lies on; null for what lies on the clock alone. */
function ownBeat(plan: Plan, thing: Timed): string | null {
  if (thing.type === 'mark') return markIn(plan, thing)?.mark.beat ?? null;
  if (thing.type === 'pass') return plan.passes?.find(({ id }) => id === thing.passId)?.beat ?? null;
  if (thing.type !== 'span') return null;
  return plan.setups.find(({ id }) => id === thing.setupId)?.span[thing.end] ?? null;
}

/** Puts what lies on a beat on the beat nearest to a moment; of beats at one moment its own is the nearest. */
function toBeat(plan: Plan, thing: Timed, wanted: number): Retimed {
  const own = ownBeat(plan, thing);
  const ownFirst = beatsFor(plan, thing).toSorted((a, b) => Number(b.id === own) - Number(a.id === own));
  const beat = nearestBeat(ownFirst, wanted);
  if (!beat) return { plan, seconds: momentOf(plan, thing), caught: null };
  const edited = (): Plan => {
    switch (thing.type) {
      case 'mark':
        return changeMark(plan, { ...thing, patch: { beat: beat.id } });
      case 'pass':
        return changePass(plan, { passId: thing.passId, patch: { beat: beat.id } });
      case 'span': {
        const setup = plan.setups.find(({ id }) => id === thing.setupId);
        if (!setup) return plan;
        const span = { ...setup.span, [thing.end]: beat.id };
        return changeSetup(plan, { setupId: setup.id, patch: { span } });
      }
      default:
        return plan;
    }
  };
  return { plan: edited(), seconds: beat.atSeconds, caught: { on: 'beat', beatId: beat.id } };
}

/**
 * Takes a thing to a moment, as near as it may go: marks, passes and the ends of spans to the nearest beat, the rest
 * where it catches within reach, or to a frame. A beat that ripples takes along all beats after it.
 */
export function retime(
  plan: Plan,
  thing: Timed,
  wanted: number,
  how: { readonly reachSeconds: number; readonly ripples?: boolean },
): Retimed {
  if (thing.type === 'mark' || thing.type === 'pass' || thing.type === 'span')
    return toBeat(plan, thing, wanted);
  const { reachSeconds, ripples = false } = how;
  if (thing.type === 'cue' || thing.type === 'fade') return retimedCue(plan, thing, wanted, reachSeconds);
  const [low, high] = roomOf(plan, thing, ripples);
  if (thing.type === 'key') {
    const span = [low, high] as const;
    const after = retimed(plan, { ...thing, seconds: wanted, span, reachSeconds });
    const key = after.setups.find(({ id }) => id === thing.setupId)?.move.keys[thing.keyIndex];
    const caught: Caught | null = key?.beat === undefined ? null : { on: 'beat', beatId: key.beat };
    return { plan: after, seconds: momentOf(after, thing), caught };
  }
  const others = plan.beats.filter(({ id }) => thing.type !== 'beat' || id !== thing.beatId);
  const snapped = snapTime(wanted, others, reachSeconds);
  const seconds = tidySeconds(Math.min(high, Math.max(low, snapped.seconds)));
  const caught = seconds === snapped.seconds ? snapped.caught : null;
  if (thing.type === 'beat') {
    const { beatId } = thing;
    return {
      plan: changeBeat(plan, { beatId, patch: { atSeconds: seconds }, ripple: ripples }),
      seconds,
      caught,
    };
  }
  const holdSeconds = tidySeconds(seconds - secondsOfBeat(plan, markIn(plan, thing)?.mark.beat ?? ''));
  return { plan: changeMark(plan, { ...thing, patch: { holdSeconds } }), seconds, caught };
}

/** How a key press moves a thing: by frames, by seconds, or from beat to beat. */
export type Nudge = 'frame' | 'second' | 'beat';

/** The moment that a press takes a thing to, seconds. What lies on beats goes from beat to beat. */
export function nudgedTo(plan: Plan, thing: Timed, way: -1 | 1, by: Nudge): number {
  const now = momentOf(plan, thing);
  const onBeats = thing.type === 'mark' || thing.type === 'pass' || thing.type === 'span';
  if (!onBeats && by !== 'beat') return now + way * (by === 'second' ? 1 : FRAME_SECONDS);
  const moments = beatsFor(plan, thing)
    .map(({ atSeconds }) => atSeconds)
    .filter((atSeconds) => (way > 0 ? atSeconds > now : atSeconds < now));
  return (way > 0 ? moments[0] : moments.at(-1)) ?? now;
}
