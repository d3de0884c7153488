import { secondsOfCue } from '../../core/plan/cues';
import { setCue } from '../../core/plan/edits/changeCues';
import type { Plan } from '../../core/plan/schema/plan';
import { type Caught, snapTime, tidySeconds } from './snapTime';
import { lampIn, type Timed } from './things';

/** A cue, or the end of its fade. */
export type TimedCue = Extract<Timed, { readonly type: 'cue' | 'fade' }>;

const LAST_SECONDS = 3600;
/** The longest fade that a plan takes, seconds. */
const LONGEST_SECONDS = 600;

const cueIn = (plan: Plan, { itemId, cueIndex }: TimedCue) => lampIn(plan, itemId)?.cues?.[cueIndex] ?? null;

/** When a cue begins, or is done where nothing comes between, seconds; 0 for one that is not there. */
export function momentOfCue(plan: Plan, thing: TimedCue): number {
  const cue = cueIn(plan, thing);
  if (!cue) return 0;
  return secondsOfCue(plan, cue) + (thing.type === 'fade' ? cue.fadeSeconds : 0);
}

/** Between which moments a cue or the end of its fade may go, seconds. */
export function roomOfCue(plan: Plan, thing: TimedCue): readonly [number, number] {
  if (thing.type === 'cue') return [0, LAST_SECONDS];
  const from = momentOfCue(plan, { ...thing, type: 'cue' });
  return [from, from + LONGEST_SECONDS];
}

/**
 * The plan with a cue at a moment, on a beat where one is within reach, else on the clock; or with its fade done then.
 * @param reachSeconds how near catches; less than 0 for nowhere
 */
export function retimedCue(
  plan: Plan,
  thing: TimedCue,
  wanted: number,
  reachSeconds: number,
): { readonly plan: Plan; readonly seconds: number; readonly caught: Caught | null } {
  const which = { id: thing.itemId, cueIndex: thing.cueIndex };
  const [low, high] = roomOfCue(plan, thing);
  const snapped = snapTime(wanted, plan.beats, reachSeconds);
  const seconds = tidySeconds(Math.min(high, Math.max(low, snapped.seconds)));
  const caught = Math.abs(seconds - snapped.seconds) < 1e-9 ? snapped.caught : null;
  if (thing.type === 'fade') {
    const fadeSeconds = tidySeconds(seconds - low);
    return { plan: setCue(plan, { ...which, patch: { fadeSeconds } }), seconds, caught };
  }
  const patch =
    caught?.on === 'beat' ? { atSeconds: 0, beat: caught.beatId } : { atSeconds: seconds, beat: undefined };
  return { plan: setCue(plan, { ...which, patch }), seconds, caught };
}
