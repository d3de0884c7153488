import * as v from 'valibot';
import { castFaults } from '../castChecks';
import { type Mark, mark as markSchema, type Performer, performer as performerSchema } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { dropCheats } from './cheats';
import { editRecord } from './editRecord';
import { freeId } from './freeId';
import { tidyCoordinate } from './tidy';

/** A performer changed by a change that the schema takes; the same performer where it does not. */
export const changedPerformer = (plan: Plan, id: string, change: (performer: Performer) => Performer): Plan =>
  editRecord(plan, id, {
    cast: (before) => {
      const after = change(before);
      return after !== before && v.is(performerSchema, after) ? after : before;
    },
  });

/** The plan after a change, unless it names a beat or somebody that there is not. */
export const withoutFaults = (before: Plan, after: Plan): Plan =>
  after === before || castFaults(after).length > 0 ? before : after;

/** Fields of a mark; undefined takes out one that may be left out. */
export type MarkPatch = { readonly [Field in Exclude<keyof Mark, 'id'>]?: Mark[Field] | undefined };

/**
 * Takes fields of one mark of a performer to other values; its id stays. What the schema refuses, or a beat or somebody
 * that the plan does not have, changes nothing.
 */
export function changeMark(
  plan: Plan,
  args: { readonly performerId: string; readonly markId: string; readonly patch: MarkPatch },
): Plan {
  const { performerId, markId, patch } = args;
  const next = changedPerformer(plan, performerId, (performer) => {
    const index = performer.marks.findIndex(({ id }) => id === markId);
    const mark = performer.marks[index];
    if (!mark) return performer;
    const entries = Object.entries({ ...mark, ...patch, id: mark.id });
    const shape: unknown = Object.fromEntries(entries.filter(([, value]) => value !== undefined));
    if (!v.is(markSchema, shape) || JSON.stringify(shape) === JSON.stringify(mark)) return performer;
    return { ...performer, marks: performer.marks.with(index, shape) };
  });
  return withoutFaults(plan, next);
}

/** Takes a mark out, and what setups cheat of it; the performer goes on from the one before it to the one after. */
export function removeMark(
  plan: Plan,
  { performerId, markId }: { readonly performerId: string; readonly markId: string },
): Plan {
  const next = changedPerformer(plan, performerId, (performer) => {
    const marks = performer.marks.filter(({ id }) => id !== markId);
    return marks.length < performer.marks.length ? { ...performer, marks } : performer;
  });
  return next === plan ? plan : dropCheats(next, { performerId, markId });
}

/** How far from the last mark a new one lies, so that both can be taken hold of. Source: common practice, no source */
const APART_METRES = 1;

/** Adds a mark at the beat after the last one's, a metre to the right of it; at the middle of the roof where it is the first. */
export function addMark(plan: Plan, { performerId }: { readonly performerId: string }): Plan {
  const beats = plan.beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  return changedPerformer(plan, performerId, (performer) => {
    const last = performer.marks.at(-1);
    const place = beats.findIndex(({ id }) => id === last?.beat);
    const beat = beats[place + 1] ?? beats.at(-1);
    if (!beat) return performer;
    const mark: Mark = {
      stance: 'stand',
      holdSeconds: 0,
      headingDegrees: 0,
      ...last,
      at: last ? [tidyCoordinate(last.at[0] + APART_METRES), last.at[1]] : [0, 0],
      id: freeId(performer.marks, 'mark'),
      beat: beat.id,
    };
    return { ...performer, marks: [...performer.marks, mark] };
  });
}
