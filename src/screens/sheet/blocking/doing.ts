import { addBeat } from '../../../core/plan/edits/addBeat';
import { removeKey } from '../../../core/plan/edits/changeKeys';
import { removeMark } from '../../../core/plan/edits/changeMark';
import { removeBeat } from '../../../core/plan/edits/removeBeat';
import { removeLine } from '../../../core/plan/edits/removeLine';
import { removePass } from '../../../core/plan/edits/removePass';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { chooseThing, editBlocking } from '../../../desk/blocking/choosing';
import { keyOf, markIn, secondsOfBeat, type Thing } from '../../../desk/blocking/things';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { tell } from '../../actions/doing';

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
      removed('take out a beat', `The beat ${label} is out.`, (before) => removeBeat(before, thing));
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

/** The moment of the beat nearest to the playhead is where new marks and passes go first. */
export function beatHere(plan: Plan): string | null {
  const { seconds } = liveStore.getState();
  const nearest = plan.beats.toSorted(
    (a, b) => Math.abs(secondsOfBeat(plan, a.id) - seconds) - Math.abs(secondsOfBeat(plan, b.id) - seconds),
  )[0];
  return nearest?.id ?? null;
}
