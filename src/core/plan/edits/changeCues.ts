import * as v from 'valibot';
import { isLamp } from '../cues';
import { type Cue, cue as cueSchema } from '../schema/gear';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { MOST } from './limits';

/** Which cue: its lamp, and its place in the lamp's list, from 0. */
export interface WhichCue {
  readonly id: string;
  readonly cueIndex: number;
}

/**
 * The plan with other cues of a lamp; without any the field is left out. The same plan for the same list, and for what
 * is no lamp.
 */
function withCues(plan: Plan, id: string, change: (cues: Cue[]) => Cue[]): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (!isLamp(gear)) return gear;
      const { cues: before = [], ...rest } = gear;
      const cues = change(before);
      if (cues === before) return gear;
      return cues.length === 0 ? rest : { ...rest, cues };
    },
  });
}

const isSound = ({ beats }: Plan, cue: unknown): cue is Cue =>
  v.is(cueSchema, cue) && (cue.beat === undefined || beats.some(({ id }) => id === cue.beat));

/**
 * Has a lamp change at a moment: the cue comes after the others of its list, wherever it is on the clock. The same plan
 * for what is no lamp, for a beat that there is not, for what the schema refuses, and where the lamp has 60 cues.
 */
export const addCue = (plan: Plan, { id, cue }: { readonly id: string; readonly cue: Cue }): Plan =>
  isSound(plan, cue)
    ? withCues(plan, id, (cues) => (cues.length >= MOST.cues ? cues : [...cues, cue]))
    : plan;

/** Changes fields of a cue; undefined takes it off its beat. What would be no cue changes nothing. */
export const setCue = (
  plan: Plan,
  args: WhichCue & { readonly patch: { readonly [Field in keyof Cue]?: Cue[Field] | undefined } },
): Plan =>
  withCues(plan, args.id, (cues) => {
    const before = cues[args.cueIndex];
    if (!before) return cues;
    const fields = Object.entries({ ...before, ...args.patch }).filter(([, value]) => value !== undefined);
    const next: unknown = Object.fromEntries(fields);
    if (!isSound(plan, next) || JSON.stringify(next) === JSON.stringify(before)) return cues;
    return cues.with(args.cueIndex, next);
  });

/** Takes a cue out. */
export const removeCue = (plan: Plan, { id, cueIndex }: WhichCue): Plan =>
  withCues(plan, id, (cues) => (cues[cueIndex] ? cues.toSpliced(cueIndex, 1) : cues));
