import type { Mark, Performer } from '../schema/cast';
import type { Plan } from '../schema/plan';

/** When a beat is, seconds on the action's clock; not a number for one that there is not. */
export function momentsOf(plan: Plan): (beatId: string) => number {
  const moments = new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds]));
  return (beatId) => moments.get(beatId) ?? Number.NaN;
}

/** A performer's marks in the order of their beats, as they go to them. */
export function timedMarks(plan: Plan, performer: Performer): readonly Mark[] {
  const momentOf = momentsOf(plan);
  return performer.marks.toSorted((a, b) => momentOf(a.beat) - momentOf(b.beat));
}

/** The mark that a performer comes from on the way to another one; null for the first. */
export function markBefore(plan: Plan, performer: Performer, markId: string): Mark | null {
  const marks = timedMarks(plan, performer);
  return marks[marks.findIndex(({ id }) => id === markId) - 1] ?? null;
}

/** Where a performer stays at a beat: the mark of that beat, else the last before it, else their first. */
export function markAtBeat(plan: Plan, performer: Performer, beatId: string): Mark | null {
  const momentOf = momentsOf(plan);
  const marks = timedMarks(plan, performer);
  return marks.findLast(({ beat }) => momentOf(beat) <= momentOf(beatId)) ?? marks[0] ?? null;
}
