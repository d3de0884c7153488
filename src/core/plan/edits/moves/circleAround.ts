import { bearingOf, metresBetween, spotFrom } from '../../runs';
import type { Spot } from '../../schema/numbers';
import type { Plan } from '../../schema/plan';
import { MOST } from '../limits';
import { kept, sameSpot, tidyHeading, tidySpot } from '../tidy';
import { markAtBeat, momentsOf } from '../timedMarks';
import { clearBetween, performerIn, standAt } from './blocked';

/** From one place of the arc to the next, where there is room for so many: a curve through them keeps to it within a centimetre. */
const STEP_DEGREES = 20;
/** Twice round. */
const MOST_DEGREES = 720;
/** Nearer than this one walks through the other, metres. */
const NEAREST_METRES = 0.5;

/**
 * Has a performer walk round another between two beats, on an arc about where the other stands at the first of them,
 * and end at a mark on it, facing and looking at them; on the way the head is kept on them. `turnDegrees` is how far
 * round, clockwise seen from above, at most twice; `radiusMetres` how far away, as far as they stand apart where left
 * out, half a metre at least. What is written are places of a curved way and a mark, to be changed like others; the
 * performer's marks between the two beats go. The same plan for somebody without a mark, one who walks round
 * themselves, and a second beat that is not after the first.
 */
export function circleAround(
  plan: Plan,
  args: {
    readonly performerId: string;
    readonly aroundId: string;
    readonly fromBeat: string;
    readonly toBeat: string;
    readonly turnDegrees: number;
    readonly radiusMetres?: number;
  },
): Plan {
  const { performerId, aroundId, fromBeat, toBeat } = args;
  const momentOf = momentsOf(plan);
  const [walker, other] = [performerIn(plan, performerId), performerIn(plan, aroundId)];
  if (!walker || !other || walker === other || !(momentOf(toBeat) > momentOf(fromBeat))) return plan;
  const [start, middle] = [markAtBeat(plan, walker, fromBeat), markAtBeat(plan, other, fromBeat)];
  const turn = kept(args.turnDegrees, -MOST_DEGREES, MOST_DEGREES);
  if (!start || !middle || !Number.isFinite(turn) || turn === 0) return plan;
  const apart = metresBetween(middle.at, start.at);
  const radius = Math.max(args.radiusMetres ?? apart, NEAREST_METRES);
  if (!Number.isFinite(radius)) return plan;
  const from = apart > 0 ? bearingOf(middle.at, start.at) : middle.headingDegrees;
  const steps = kept(Math.ceil(Math.abs(turn) / STEP_DEGREES), 1, MOST.wayPlaces - 1);
  const onArc = (step: number): Spot => tidySpot(spotFrom(middle.at, from + (turn * step) / steps, radius));
  const arc = Array.from({ length: steps }, (_, step) => onArc(step));
  const through = sameSpot(arc[0], tidySpot(start.at)) ? arc.slice(1) : arc;
  const end = onArc(steps);
  const held = clearBetween(
    // They set out from where they are, even if that is no mark of this beat.
    start.beat === fromBeat
      ? plan
      : standAt(plan, {
          performerId,
          beatId: fromBeat,
          at: start.at,
          patch: { headingDegrees: start.headingDegrees, stance: start.stance },
        }),
    { performerId, fromBeat, toBeat },
  );
  return standAt(held, {
    performerId,
    beatId: toBeat,
    at: end,
    patch: {
      headingDegrees: tidyHeading(bearingOf(end, middle.at)),
      faces: { who: aroundId },
      looks: { who: aroundId },
      looksOnTheWay: { who: aroundId },
      way: through.length === 0 ? undefined : { through, line: 'curved' },
    },
  });
}
