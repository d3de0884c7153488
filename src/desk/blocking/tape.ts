import { changeMark } from '../../core/plan/edits/changeMark';
import { moveMark } from '../../core/plan/edits/moveMark';
import { removeCheat } from '../../core/plan/edits/removeCheat';
import { setCheat } from '../../core/plan/edits/setCheat';
import { tidyHeading } from '../../core/plan/edits/tidy';
import { played } from '../../core/plan/played';
import type { Mark, Performer } from '../../core/plan/schema/cast';
import type { Spot } from '../../core/plan/schema/numbers';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { marksInTime, secondsOfBeat } from './things';

/** Which mark. */
export interface OfMark {
  readonly performerId: string;
  readonly markId: string;
}

/** Marks nearer to each other than this lie on one piece of tape, metres. */
const SAME_METRES = 0.005;
const HAIR_SECONDS = 1e-4;

/** The marks on one piece of tape: those of a performer that follow one another in time and lie where one of them does. */
export function tapeOf(plan: Plan, performer: Performer, markId: string): readonly Mark[] {
  const marks = marksInTime(plan, performer);
  const place = marks.findIndex(({ id }) => id === markId);
  const here = marks[place];
  if (!here) return [];
  const isHere = ({ at }: Mark): boolean => Math.hypot(at[0] - here.at[0], at[1] - here.at[1]) < SAME_METRES;
  const from = marks.findLastIndex((mark, index) => index < place && !isHere(mark)) + 1;
  const until = marks.findIndex((mark, index) => index > place && !isHere(mark));
  return marks.slice(from, until < 0 ? marks.length : until);
}

/** Every piece of tape of a performer, in the order of time. */
export function tapesOf(plan: Plan, performer: Performer): readonly (readonly Mark[])[] {
  const tapes: (readonly Mark[])[] = [];
  for (const mark of marksInTime(plan, performer)) {
    if (!tapes.at(-1)?.includes(mark)) tapes.push(tapeOf(plan, performer, mark.id));
  }
  return tapes;
}

/** The mark that somebody goes to next, or stands at from this very instant on; the last one after all. */
export function nextMark(plan: Pick<Plan, 'beats'>, performer: Performer, seconds: number): Mark | null {
  const marks = marksInTime(plan, performer);
  return (
    marks.find(({ beat }) => secondsOfBeat(plan, beat) >= seconds - HAIR_SECONDS) ?? marks.at(-1) ?? null
  );
}

/** The mark that somebody was at last, or is at; the first one before all. */
export function markNow(plan: Pick<Plan, 'beats'>, performer: Performer, seconds: number): Mark | null {
  const marks = marksInTime(plan, performer);
  return (
    marks.findLast(({ beat }) => secondsOfBeat(plan, beat) <= seconds + HAIR_SECONDS) ?? marks[0] ?? null
  );
}

/** The plan with a mark, and the others on its piece of tape, at [x, z], metres; only in a setup where one is given. */
export function moveTape(plan: Plan, { performerId, markId }: OfMark, to: Spot, onlyIn: Setup | null): Plan {
  const seen = onlyIn ? played(plan, onlyIn) : plan;
  const performer = seen.cast.find(({ id }) => id === performerId);
  if (!performer) return plan;
  return tapeOf(seen, performer, markId).reduce(
    (before, { id }) =>
      onlyIn
        ? setCheat(before, { setupId: onlyIn.id, performerId, markId: id, at: to })
        : moveMark(before, { performerId, markId: id, to }),
    plan,
  );
}

/** The plan with somebody turned to a heading at one mark, whatever they faced there; only in a setup where one is given. */
export function turnMark(
  plan: Plan,
  { performerId, markId }: OfMark,
  degrees: number,
  onlyIn: Setup | null,
): Plan {
  const headingDegrees = tidyHeading(degrees);
  if (!onlyIn) return changeMark(plan, { performerId, markId, patch: { headingDegrees, faces: undefined } });
  const shot = played(plan, onlyIn).cast.find(({ id }) => id === performerId);
  const at = shot?.marks.find(({ id }) => id === markId)?.at;
  return at ? setCheat(plan, { setupId: onlyIn.id, performerId, markId, at, headingDegrees }) : plan;
}

/** The plan with a mark, and the others on its piece of tape, where the master has them in a setup too. */
export function putBackTape(plan: Plan, { performerId, markId }: OfMark, setup: Setup): Plan {
  const performer = played(plan, setup).cast.find(({ id }) => id === performerId);
  if (!performer) return plan;
  return tapeOf(played(plan, setup), performer, markId).reduce(
    (before, { id }) => removeCheat(before, { setupId: setup.id, performerId, markId: id }),
    plan,
  );
}
