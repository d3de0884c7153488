import { dimAt, flickerOf, flickersAt } from '../../../core/plan/cues';
import { addBeat } from '../../../core/plan/edits/addBeat';
import { addCue, removeCue } from '../../../core/plan/edits/changeCues';
import { removeKey } from '../../../core/plan/edits/changeKeys';
import { removeMark } from '../../../core/plan/edits/changeMark';
import { removeBeat } from '../../../core/plan/edits/removeBeat';
import { removeLine } from '../../../core/plan/edits/removeLine';
import { removePass } from '../../../core/plan/edits/removePass';
import { reshapeItem } from '../../../core/plan/edits/reshapeItem';
import { named } from '../../../core/plan/named';
import type { Cue } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { chooseThing, editBlocking } from '../../../desk/blocking/choosing';
import { snapTime } from '../../../desk/blocking/snapTime';
import { keyOf, lampIn, markIn, secondsOfBeat, type Thing } from '../../../desk/blocking/things';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { tell } from '../../actions/doing';
import { FIRST_FLICKER } from '../fields/flickerFields';

/** A cue is put on a beat that lies as near to the playhead, seconds. */
const ON_BEAT_SECONDS = 0.05;

/** Puts the focus on a thing of the timeline, once it is drawn. */
export function focusThing(thing: Thing): void {
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>(`[data-thing="${CSS.escape(keyOf(thing))}"]`)?.focus(),
  );
}

/** Opens the fields of a thing and goes to the first of them. */
function openPanel(): void {
  blockingStore.setState({ panel: true });
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>('.blocking-panel :is(select, input, button.bare)')?.focus(),
  );
}

/** What Enter and a double press do: a beat and a performer are named in their place, the rest shows its fields. */
export function enterThing(thing: Thing): void {
  chooseThing(thing);
  if (thing.type === 'beat' || thing.type === 'performer') blockingStore.setState({ naming: keyOf(thing) });
  else openPanel();
}

/** What cannot be taken out by itself: a camera, the end of a hold. */
export function removeThing(plan: Plan, thing: Thing): void {
  const removed = (name: string, sentence: string, change: (plan: Plan) => Plan): void => {
    if (!editBlocking(name, change)) return;
    blockingStore.setState({ chosen: null });
    tell(sentence);
  };
  switch (thing.type) {
    case 'beat': {
      const label = plan.beats.find(({ id }) => id === thing.beatId)?.label ?? '';
      removed('take out a beat', `The beat ${named(label)} is out.`, (before) => removeBeat(before, thing));
      return;
    }
    case 'mark': {
      const name = markIn(plan, thing)?.name ?? '';
      removed('take out a mark', `Mark ${name} is out.`, (before) => removeMark(before, thing));
      return;
    }
    case 'pass':
      removed('take out a pass', 'The pass is out.', (before) => removePass(before, thing));
      return;
    case 'line':
      removed('take out a line', 'The line is out.', (before) => removeLine(before, thing));
      return;
    case 'cue':
    case 'fade':
      removed('take out a cue', 'The cue is out.', (before) =>
        removeCue(before, { id: thing.itemId, cueIndex: thing.cueIndex }),
      );
      return;
    case 'key':
      removed('take out a key', 'The key is out.', (before) => removeKey(before, thing));
      return;
    default:
  }
}

/** Puts a beat at the playhead and asks for its name in its place. */
export function addBeatHere(): void {
  const { beats } = livePlan();
  const { seconds } = liveStore.getState();
  const known = new Set(beats.map(({ id }) => id));
  editBlocking('add a beat', (plan) => addBeat(plan, { atSeconds: Math.round(seconds * 100) / 100 }));
  const added = planStore.getState().plan.beats.find(({ id }) => !known.has(id));
  if (!added) return;
  const thing: Thing = { type: 'beat', beatId: added.id };
  chooseThing(thing);
  blockingStore.setState({ naming: keyOf(thing) });
}

/** A fade that is begun with a cue lasts so long, seconds. Source: common practice, no source */
const FIRST_FADE_SECONDS = 2;

/** Puts what a cue does at the playhead, on the beat that lies there where one does, and chooses it. */
function putCueHere(
  itemId: string,
  does: Pick<Cue, 'dim' | 'fadeSeconds' | 'flickers'>,
  before = (plan: Plan): Plan => plan,
): void {
  const { seconds } = liveStore.getState();
  const lamp = lampIn(planStore.getState().plan, itemId);
  if (!lamp) return;
  const done = editBlocking('add a cue', (plan) => {
    const { seconds: atSeconds, caught } = snapTime(seconds, plan.beats, ON_BEAT_SECONDS);
    const moment = caught?.on === 'beat' ? { atSeconds: 0, beat: caught.beatId } : { atSeconds };
    return addCue(before(plan), { id: itemId, cue: { ...moment, ...does } });
  });
  if (done) chooseThing({ type: 'cue', itemId, cueIndex: lamp.cues?.length ?? 0 });
}

/** Has a lamp go out from the playhead on, or come on where it was out. */
export function addCueHere(itemId: string): void {
  const { plan } = planStore.getState();
  const lamp = lampIn(plan, itemId);
  if (!lamp) return;
  const dim = dimAt(lamp, plan, liveStore.getState().seconds) > 0 ? 0 : lamp.dim || 1;
  putCueHere(itemId, { dim, fadeSeconds: FIRST_FADE_SECONDS });
}

/** The plan in which a lamp has a pattern to flicker by, which waits for its cue where it had none. */
export function withPattern(plan: Plan, itemId: string): Plan {
  const lamp = lampIn(plan, itemId);
  return lamp === null || flickerOf(lamp) !== null
    ? plan
    : reshapeItem(plan, { id: itemId, patch: { flicker: { ...FIRST_FLICKER, waits: true } } });
}

/** Has the flicker of a lamp of the place begin at the playhead, or end where it plays; one without a pattern gets one. */
export function addFlickerCueHere(itemId: string): void {
  const { plan } = planStore.getState();
  const lamp = lampIn(plan, itemId);
  if (!lamp) return;
  const flickers = !flickersAt(lamp, plan, liveStore.getState().seconds);
  putCueHere(itemId, { fadeSeconds: 0, flickers }, (before) => withPattern(before, itemId));
}

/** The moment of the beat nearest to the playhead is where new marks and passes go first. */
export function beatHere(plan: Plan): string | null {
  const { seconds } = liveStore.getState();
  const nearest = plan.beats.toSorted(
    (a, b) => Math.abs(secondsOfBeat(plan, a.id) - seconds) - Math.abs(secondsOfBeat(plan, b.id) - seconds),
  )[0];
  return nearest?.id ?? null;
}
