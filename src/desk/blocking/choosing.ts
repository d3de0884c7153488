import type { Plan } from '../../core/plan/schema/plan';
import { chooseSetup, goToSeconds } from '../choose';
import { livePlan, liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { sessionStore } from '../sessionStore';
import { toastStore } from '../toastStore';
import { blockingStore } from './blockingStore';
import { momentOf } from './retime';
import { beatsInTime, type Thing, type Timed } from './things';

const isTimed = (thing: Thing): thing is Timed =>
  thing.type !== 'performer' && thing.type !== 'setup' && thing.type !== 'lamp' && thing.type !== 'line';

/** Chooses a thing of the blocking: on the roof its performer or lamp is chosen too, its setup is looked through. */
export function chooseThing(thing: Thing): void {
  blockingStore.setState({ chosen: thing });
  if ('performerId' in thing) sessionStore.getState().setSelectedId(thing.performerId);
  if ('itemId' in thing) sessionStore.getState().setSelectedId(thing.itemId);
  if ('setupId' in thing) chooseSetup(thing.setupId);
}

/** Chooses a thing and takes the clock to its moment. */
export function visitThing(thing: Thing): void {
  chooseThing(thing);
  if (!isTimed(thing)) return;
  liveStore.getState().setPlaying(false);
  goToSeconds(momentOf(livePlan(), thing));
}

/** Two moments nearer to each other than this are one, seconds. */
const SAME_SECONDS = 1e-4;

/** Takes the clock to the next beat, or to the one before, and stops what plays. */
export function stepBeat(way: -1 | 1): void {
  const { seconds, setPlaying } = liveStore.getState();
  setPlaying(false);
  const moments = beatsInTime(livePlan()).map(({ atSeconds }) => atSeconds);
  const next =
    way > 0
      ? moments.find((at) => at > seconds + SAME_SECONDS)
      : moments.findLast((at) => at < seconds - SAME_SECONDS);
  if (next !== undefined) goToSeconds(next);
}

/** Makes one named edit; what is refused is said. Says whether anything changed. */
export function editBlocking(name: string, change: (plan: Plan) => Plan): boolean {
  if (liveStore.getState().gesture) return false;
  const before = planStore.getState().plan;
  const [fault] = planStore.getState().edit(name, change);
  if (fault) toastStore.getState().say(fault.sentence, { tone: 'warn' });
  return planStore.getState().plan !== before;
}
