import { bearingOf, metresBetween, spotFrom } from '../../runs';
import type { Performer } from '../../schema/cast';
import type { Plan } from '../../schema/plan';
import { tidyHeading, tidySpot } from '../tidy';
import { markAtBeat, markBefore } from '../timedMarks';
import { ownMark, performerIn, standAt } from './blocked';

/**
 * Where the eyes of somebody who stands are from the middle of their feet, in shares of stature: ahead, and to their
 * left, as one leg takes the weight. The figures' own, which a test holds it to.
 */
const EYES_AHEAD = { male: 0.05672, female: 0.0579 } as const;
const EYES_LEFT = { male: 0.01156, female: 0.01152 } as const;

/** How far the middles of two people's feet lie apart who stand face to face with so much between their eyes, metres. */
export function feetApart(one: Performer, other: Performer, apartMetres: number): number {
  const ahead = (of: Performer): number => EYES_AHEAD[of.figure] * of.statureMetres;
  const left = (of: Performer): number => EYES_LEFT[of.figure] * of.statureMetres;
  // Each stands a little to their own left, so the eyes are beside each other by the sum of it.
  const aside = left(one) + left(other);
  return ahead(one) + ahead(other) + Math.sqrt(Math.max(0, apartMetres * apartMetres - aside * aside));
}

/**
 * Has a performer stop before another at a beat, so that the plumb lines through their eyes are `apartMetres` apart,
 * both standing, facing and looking at each other. The first moves: they come along the line from where they were; the
 * other stands where they stand at that beat, and gets a mark there where they have none. On one spot, the performer
 * comes to stand before the other's face. The same plan for somebody without a mark, one and the same person, and
 * nothing or less between them.
 */
export function stopFaceToFace(
  plan: Plan,
  args: {
    readonly performerId: string;
    readonly otherId: string;
    readonly beatId: string;
    readonly apartMetres: number;
  },
): Plan {
  const { performerId, otherId, beatId, apartMetres } = args;
  const [mover, other] = [performerIn(plan, performerId), performerIn(plan, otherId)];
  if (
    !mover ||
    !other ||
    mover === other ||
    !(apartMetres > 0) ||
    !plan.beats.some(({ id }) => id === beatId)
  )
    return plan;
  const own = ownMark(mover, beatId);
  const from = (own && markBefore(plan, mover, own.id)) ?? markAtBeat(plan, mover, beatId);
  const there = markAtBeat(plan, other, beatId);
  if (!from || !there) return plan;
  const bearing = metresBetween(there.at, from.at) > 0 ? bearingOf(there.at, from.at) : there.headingDegrees;
  const at = tidySpot(spotFrom(there.at, bearing, feetApart(mover, other, apartMetres)));
  const turned = standAt(plan, {
    performerId: otherId,
    beatId,
    at: there.at,
    patch: {
      headingDegrees: tidyHeading(bearing),
      stance: 'stand',
      faces: { who: performerId },
      looks: { who: performerId },
    },
  });
  return standAt(turned, {
    performerId,
    beatId,
    at,
    patch: {
      headingDegrees: tidyHeading(bearing + 180),
      stance: 'stand',
      faces: { who: otherId },
      looks: { who: otherId },
      way: undefined,
    },
  });
}
