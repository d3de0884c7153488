import * as v from 'valibot';
import { crossCheck } from './crossChecks';
import { MOST } from './edits/limits';
import type { PlanFault } from './faults';
import { parsePlan } from './parse';
import { type Plan, plan as planSchema } from './schema/plan';

type Fields = Readonly<Record<string, unknown>>;

/** Lists whose records are looked at one by one, and how long they may be. */
const LISTS: Readonly<Record<string, number>> = {
  pieces: MOST.pieces,
  cast: MOST.cast,
  gear: MOST.gear,
  setups: MOST.setups,
};

/**
 * What is wrong with a plan that an edit made of one that holds: the faults of `parsePlan`, none where it reads. Fields
 * and records that are the same objects as before are not read again, so that an edit of one takes little on a full roof.
 * @param before a plan that `parsePlan` reads
 */
export function editFaults(before: Plan, after: Plan): readonly PlanFault[] {
  const [was, now]: readonly [Fields, Fields] = [before, after];
  const holds =
    Object.keys(now).every((field) => Object.hasOwn(planSchema.entries, field)) &&
    Object.entries(planSchema.entries).every(
      ([field, schema]) =>
        now[field] === was[field] || v.is(schema, changed(was[field], now[field], LISTS[field])),
    );
  if (holds && crossCheck(after).length === 0) return [];
  const read = parsePlan(after);
  return read.ok ? [] : read.faults;
}

/** What of a field is to be read: all of it, or of a list what does not stand where it stood, from the front or the back. */
function changed(was: unknown, now: unknown, most: number | undefined): unknown {
  if (most === undefined || !Array.isArray(was) || !Array.isArray(now) || now.length > most) return now;
  const shift = was.length - now.length;
  return now.filter(
    (record, place) => record === undefined || (record !== was[place] && record !== was[place + shift]),
  );
}
