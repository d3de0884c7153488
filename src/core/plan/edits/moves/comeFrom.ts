import { bearingOf, metresBetween } from '../../runs';
import type { Spot } from '../../schema/numbers';
import type { Plan } from '../../schema/plan';
import { addBeat } from '../addBeat';
import { sameSpot, tidyHeading, tidyMetres, tidySpot } from '../tidy';
import { markAtBeat, momentsOf } from '../timedMarks';
import { clearBetween, ownMark, performerIn, standAt } from './blocked';

/** An ordinary walk, metres a second. Source: common practice, no source */
export const ORDINARY_PACE = 1.4;
/** Time to get going and to stop, as the figures take it, seconds. Source: common practice, no source */
const RAMP_SECONDS = 0.4;

/**
 * Has a performer come in from a place, [x, z], metres, so as to be at their mark at a beat: a mark at the place from
 * which they walk at an ordinary pace, leaving as late as that lets them. It hangs on the last beat that is early
 * enough, where they wait; with none, on the first of all, at a faster pace, or with `newBeat` on a beat that is added
 * at the moment when they leave. Their marks between the two go, and the way to the mark is straight. The same plan for
 * somebody without a mark, a place that is the mark itself, and where no beat is before.
 */
export function comeFrom(
  plan: Plan,
  args: {
    readonly performerId: string;
    readonly beatId: string;
    readonly corner: Spot;
    readonly newBeat?: boolean;
  },
): Plan {
  const { performerId, beatId, newBeat = false } = args;
  const corner = tidySpot(args.corner);
  const performer = performerIn(plan, performerId);
  const there = performer && markAtBeat(plan, performer, beatId);
  const arrive = momentsOf(plan)(beatId);
  if (!performer || !there || Number.isNaN(arrive) || sameSpot(there.at, corner)) return plan;
  const wanted = arrive - metresBetween(corner, there.at) / ORDINARY_PACE - RAMP_SECONDS;
  const leave = Math.max(0, Math.floor(wanted * 1000) / 1000);
  const isBefore = ({ atSeconds }: { readonly atSeconds: number }): boolean => atSeconds < arrive;
  const known = new Set(plan.beats.map(({ id }) => id));
  const early = plan.beats.toSorted((a, b) => a.atSeconds - b.atSeconds).filter(isBefore);
  const fits = early.findLast(({ atSeconds }) => atSeconds <= leave);
  const base =
    fits === undefined && newBeat && leave < arrive
      ? addBeat(plan, { atSeconds: leave, label: 'Sets out' })
      : plan;
  const added = base.beats.find(({ id }) => !known.has(id));
  const from = added ?? fits ?? early[0];
  if (!from) return plan;
  const way = tidyHeading(bearingOf(corner, there.at));
  const arriving = standAt(base, {
    performerId,
    beatId,
    at: there.at,
    patch: ownMark(performer, beatId)
      ? { way: undefined }
      : { headingDegrees: there.headingDegrees, stance: there.stance },
  });
  const cleared = clearBetween(arriving, { performerId, fromBeat: from.id, toBeat: beatId });
  return standAt(cleared, {
    performerId,
    beatId: from.id,
    at: corner,
    patch: {
      headingDegrees: way,
      stance: 'stand',
      holdSeconds: tidyMetres(Math.max(0, leave - from.atSeconds)),
      faces: undefined,
      looks: undefined,
    },
  });
}
