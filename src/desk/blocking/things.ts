import { isLamp, type Lamp } from '../../core/plan/cues';
import type { Mark, Performer } from '../../core/plan/schema/cast';
import type { Plan } from '../../core/plan/schema/plan';

/** What on the blocking sheet lies at a moment and can be taken hold of. */
export type Timed =
  | { readonly type: 'beat'; readonly beatId: string }
  | { readonly type: 'mark'; readonly performerId: string; readonly markId: string }
  /** The end of a mark's hold: there the walk to the next mark begins. */
  | { readonly type: 'hold'; readonly performerId: string; readonly markId: string }
  | { readonly type: 'pass'; readonly passId: string }
  | { readonly type: 'span'; readonly setupId: string; readonly end: 'from' | 'to' }
  | { readonly type: 'key'; readonly setupId: string; readonly keyIndex: number }
  /** When a lamp begins to change. */
  | { readonly type: 'cue'; readonly itemId: string; readonly cueIndex: number }
  /** When the change is done. */
  | { readonly type: 'fade'; readonly itemId: string; readonly cueIndex: number };

/** What can be chosen there: also what has no moment of its own. */
export type Thing =
  | Timed
  | { readonly type: 'performer'; readonly performerId: string }
  | { readonly type: 'setup'; readonly setupId: string }
  | { readonly type: 'lamp'; readonly itemId: string }
  | { readonly type: 'line'; readonly lineId: string };

/** A word for a thing that no other thing has. */
export function keyOf(thing: Thing): string {
  switch (thing.type) {
    case 'beat':
      return `beat ${thing.beatId}`;
    case 'mark':
    case 'hold':
      return `${thing.type} ${thing.performerId} ${thing.markId}`;
    case 'pass':
      return `pass ${thing.passId}`;
    case 'span':
      return `span ${thing.setupId} ${thing.end}`;
    case 'key':
      return `key ${thing.setupId} ${thing.keyIndex}`;
    case 'cue':
    case 'fade':
      return `${thing.type} ${thing.itemId} ${thing.cueIndex}`;
    case 'lamp':
      return `lamp ${thing.itemId}`;
    case 'performer':
      return `performer ${thing.performerId}`;
    case 'setup':
      return `setup ${thing.setupId}`;
    case 'line':
      return `line ${thing.lineId}`;
  }
}

export const isSame = (a: Thing | null, b: Thing | null): boolean =>
  a === b || (a !== null && b !== null && keyOf(a) === keyOf(b));

const inTime = new WeakMap<Plan['beats'], readonly Plan['beats'][number][]>();

/** The beats in the order of the clock; of those at one moment, in the order of the plan. Kept while they stay the same. */
export function beatsInTime({ beats }: Pick<Plan, 'beats'>): readonly Plan['beats'][number][] {
  const known = inTime.get(beats);
  if (known) return known;
  const sorted = beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  inTime.set(beats, sorted);
  return sorted;
}

/** When a beat is, seconds; 0 for one that the plan does not have. */
export const secondsOfBeat = (plan: Pick<Plan, 'beats'>, beatId: string): number =>
  plan.beats.find(({ id }) => id === beatId)?.atSeconds ?? 0;

/** A performer and one of their marks; null where the plan has no such mark. */
export function markIn(
  plan: Plan,
  of: { readonly performerId: string; readonly markId: string },
): { readonly performer: Performer; readonly mark: Mark; readonly name: string } | null {
  const performer = plan.cast.find(({ id }) => id === of.performerId);
  const index = performer?.marks.findIndex(({ id }) => id === of.markId) ?? -1;
  const mark = performer?.marks[index];
  return performer && mark ? { performer, mark, name: markName(performer, index) } : null;
}

/** The short name of a mark, as on the roof: the performer's initial and its place among the marks. */
export const markName = (performer: Performer, index: number): string =>
  `${performer.label.trim().charAt(0).toUpperCase()}${index + 1}`;

/** A lamp of the plan; null for what is none. */
export function lampIn(plan: Pick<Plan, 'gear'>, itemId: string): Lamp | null {
  const gear = plan.gear.find(({ id }) => id === itemId);
  return gear && isLamp(gear) ? gear : null;
}

/** A performer's marks in the order of the clock. */
export const marksInTime = (plan: Pick<Plan, 'beats'>, performer: Performer): readonly Mark[] =>
  performer.marks.toSorted((a, b) => secondsOfBeat(plan, a.beat) - secondsOfBeat(plan, b.beat));

/** Whether a plan still has what was chosen in it. */
export function isIn(plan: Plan, thing: Thing): boolean {
  switch (thing.type) {
    case 'beat':
      return plan.beats.some(({ id }) => id === thing.beatId);
    case 'mark':
    case 'hold':
      return markIn(plan, thing) !== null;
    case 'pass':
      return (plan.passes ?? []).some(({ id }) => id === thing.passId);
    case 'line':
      return (plan.lines ?? []).some(({ id }) => id === thing.lineId);
    case 'performer':
      return plan.cast.some(({ id }) => id === thing.performerId);
    case 'span':
    case 'setup':
      return plan.setups.some(({ id }) => id === thing.setupId);
    case 'key':
      return (plan.setups.find(({ id }) => id === thing.setupId)?.move.keys.length ?? 0) > thing.keyIndex;
    case 'cue':
    case 'fade':
      return (lampIn(plan, thing.itemId)?.cues?.length ?? 0) > thing.cueIndex;
    case 'lamp':
      return lampIn(plan, thing.itemId) !== null;
  }
}
