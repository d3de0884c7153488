import { isLamp } from '../cues';
import type { Mark, Performer } from '../schema/cast';
import type { Gear } from '../schema/gear';
import type { Plan } from '../schema/plan';
import type { CameraKey, Setup } from '../schema/setup';
import { setupFaults } from '../setupChecks';
import { dropCheats } from './cheats';
import { changed } from './motion';
import { withPasses } from './optionalLists';
import { tidyMetres } from './tidy';

/** How much of the plan hangs on a beat. */
export interface HangingOn {
  readonly marks: number;
  readonly passes: number;
  /** Setups whose span begins or ends there. */
  readonly spans: number;
  /** Camera keys and racks of focus that count from it. */
  readonly keys: number;
  /** Cues of lamps that count from it. */
  readonly cues: number;
}

const count = <Entry>(list: readonly Entry[], passes: (entry: Entry) => boolean): number =>
  list.filter(passes).length;

/** What hangs on a beat, so that it can be said before the beat goes. */
export function hangingOn(plan: Plan, beatId: string): HangingOn {
  const isHere = ({ beat }: { readonly beat?: string | undefined }): boolean => beat === beatId;
  return {
    marks: plan.cast.reduce((sum, { marks }) => sum + count(marks, isHere), 0),
    passes: count(plan.passes ?? [], isHere),
    spans: count(plan.setups, ({ span }) => span.from === beatId || span.to === beatId),
    keys: plan.setups.reduce(
      (sum, { move, focus }) =>
        sum + count(move.keys, isHere) + ('racks' in focus ? count(focus.racks, isHere) : 0),
      0,
    ),
    cues: plan.gear.reduce((sum, gear) => sum + (isLamp(gear) ? count(gear.cues ?? [], isHere) : 0), 0),
  };
}

/** The beat that is nearest in time to another, the earlier of two; null where it is the only one. */
export function beatBeside(plan: Plan, beatId: string): string | null {
  const beat = plan.beats.find(({ id }) => id === beatId);
  if (!beat) return null;
  const others = plan.beats
    .filter(({ id }) => id !== beatId)
    .toSorted(
      (a, b) =>
        Math.abs(a.atSeconds - beat.atSeconds) - Math.abs(b.atSeconds - beat.atSeconds) ||
        a.atSeconds - b.atSeconds,
    );
  return others[0]?.id ?? null;
}

/**
 * Takes a beat out. What hangs on it goes to another, `instead`, or the one nearest in time: a refusal would leave a
 * plan that cannot be mended, and leaving marks out would lose where people stand. Marks and passes then play at that
 * beat; whoever has a mark there already keeps that one alone, as nobody stands in two places at once. Spans end
 * there, camera keys, racks and cues of lamps keep their moments. The same plan for the only beat while something
 * hangs on it, for an `instead` that is no other beat, and where a span would end before it starts.
 */
export function removeBeat(
  plan: Plan,
  { beatId, instead }: { readonly beatId: string; readonly instead?: string },
): Plan {
  const gone = plan.beats.find(({ id }) => id === beatId);
  if (!gone || instead === beatId) return plan;
  const without = { ...plan, beats: plan.beats.filter((beat) => beat !== gone) };
  if (Object.values(hangingOn(plan, beatId)).every((number) => number === 0)) return without;
  const heirId = instead ?? beatBeside(plan, beatId);
  const heir = plan.beats.find(({ id }) => id === heirId);
  if (!heir) return plan;

  const lostMarks: { performerId: string; markId: string }[] = [];
  const castOf = (performer: Performer): Performer => {
    const isTaken = performer.marks.some(({ beat }) => beat === heir.id);
    const marks = performer.marks.flatMap((mark): Mark[] => {
      if (mark.beat !== beatId) return [mark];
      if (!isTaken) return [{ ...mark, beat: heir.id }];
      lostMarks.push({ performerId: performer.id, markId: mark.id });
      return [];
    });
    return performer.marks.some(({ beat }) => beat === beatId) ? { ...performer, marks } : performer;
  };
  /** Counted from the other beat, or on the clock itself where that comes later. */
  const momentOf = <Moment extends Pick<CameraKey, 'atSeconds' | 'beat'>>(moment: Moment): Moment => {
    if (moment.beat !== beatId) return moment;
    const at = gone.atSeconds + moment.atSeconds;
    const { beat: _, ...free } = moment;
    return at >= heir.atSeconds
      ? { ...moment, beat: heir.id, atSeconds: tidyMetres(at - heir.atSeconds) }
      : ({ ...free, atSeconds: tidyMetres(Math.min(at, 3600)) } as Moment);
  };
  const setupOf = (setup: Setup): Setup => {
    const { span, move, focus } = setup;
    const keys = changed(move.keys, momentOf);
    const racks = 'racks' in focus ? changed(focus.racks, momentOf) : null;
    const spans = span.from === beatId || span.to === beatId;
    if (keys === move.keys && !spans && (racks === null || ('racks' in focus && racks === focus.racks)))
      return setup;
    return {
      ...setup,
      span: spans
        ? {
            from: span.from === beatId ? heir.id : span.from,
            to: span.to === beatId ? heir.id : span.to,
          }
        : span,
      move: keys === move.keys ? move : { ...move, keys },
      ...(racks && { focus: { racks } }),
    };
  };
  const gearOf = (gear: Gear): Gear => {
    if (!isLamp(gear) || !gear.cues) return gear;
    const cues = changed(gear.cues, momentOf);
    return cues === gear.cues ? gear : { ...gear, cues };
  };
  const moved: Plan = {
    ...without,
    cast: changed(without.cast, castOf),
    gear: changed(without.gear, gearOf),
    setups: changed(without.setups, setupOf),
  };
  const passed = plan.passes
    ? withPasses(
        moved,
        changed(plan.passes, (pass) => (pass.beat === beatId ? { ...pass, beat: heir.id } : pass)),
      )
    : moved;
  const next = lostMarks.reduce((left, mark) => dropCheats(left, mark), passed);
  return setupFaults(next).length === 0 ? next : plan;
}
