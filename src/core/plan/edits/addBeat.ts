import * as v from 'valibot';
import { type Beat, beat as beatSchema } from '../schema/cast';
import type { Plan } from '../schema/plan';
import { freeId } from './freeId';
import { numbered } from './freeLabel';
import { MOST } from './limits';
import { tidyMetres } from './tidy';

/** A name for a beat that none has: `Beat 3`. */
function freeBeatLabel(beats: readonly Beat[]): string {
  const taken = new Set(beats.map(({ label }) => label));
  let number = beats.length + 1;
  while (taken.has(numbered('Beat', number))) number += 1;
  return numbered('Beat', number);
}

/**
 * Adds a beat at a moment of the action's clock, among the others in the order of time; `Beat 3` where it has no name.
 * What the schema refuses, and a plan with 400 beats, stays as it is.
 */
export function addBeat(
  plan: Plan,
  { atSeconds, label }: { readonly atSeconds: number; readonly label?: string },
): Plan {
  const { beats } = plan;
  const beat = {
    id: freeId(beats, 'beat'),
    label: label ?? freeBeatLabel(beats),
    atSeconds: tidyMetres(atSeconds),
  };
  if (beats.length >= MOST.beats || !v.is(beatSchema, beat)) return plan;
  const place = beats.findLastIndex((each) => each.atSeconds <= beat.atSeconds) + 1;
  return { ...plan, beats: beats.toSpliced(place, 0, beat) };
}
