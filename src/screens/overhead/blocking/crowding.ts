import { walksOf } from '../../../core/form/figure/walks';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import { named } from '../../../core/plan/named';
import type { Mark, Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { tapeOf } from '../../../desk/blocking/tape';
import { secondsOfBeat } from '../../../desk/blocking/things';
import { sessionStore } from '../../../desk/sessionStore';
import type { Target } from '../targets';
import { walkWords } from './words';

/** Two who stand nearer than this are in one another, metres. Source: common practice, no source */
const BODIES_METRES = 0.3;
/** Higher or lower than this one is on another level, metres. */
const LEVEL_METRES = 1;
const CLOSE: ReadonlySet<Mark['stance']> = new Set(['sit', 'crouch', 'lean']);

/** Who stands where a mark has somebody stand, at the same moment; null for nobody. */
export function crowdedBy(
  plan: Plan,
  { performerId, markId }: { readonly performerId: string; readonly markId: string },
): { readonly performer: Performer; readonly other: Performer } | null {
  const performer = plan.cast.find(({ id }) => id === performerId);
  if (!performer) return null;
  for (const mark of tapeOf(plan, performer, markId)) {
    if (CLOSE.has(mark.stance)) continue;
    const seconds = secondsOfBeat(plan, mark.beat);
    for (const other of plan.cast) {
      const place = other === performer ? null : whereabouts(other, plan, seconds);
      if (!place || CLOSE.has(place.stance)) continue;
      const apart = Math.hypot(place.at[0] - mark.at[0], place.at[2] - mark.at[1]);
      if (apart < BODIES_METRES && Math.abs(place.at[1] - (mark.floorMetres ?? 0)) <= LEVEL_METRES)
        return { performer, other };
    }
  }
  return null;
}

/** What is said of a mark that was let go where somebody stands; null for another target, and where nobody does. */
export function crowdingSentence(plan: Plan, target: Target): string | null {
  const found = target.type === 'mark' ? crowdedBy(plan, target) : null;
  if (!found) return null;
  const { performer, other } = found;
  const least = formatLength(BODIES_METRES, sessionStore.getState().lengths);
  return `${named(performer.label)} stands in ${named(other.label)} there. Bodies need ${least}.`;
}

/** What is said of a mark while it is dragged: whom it stands in, and the walks to it and from it. */
export function draggedWords(plan: Plan, target: Target, lengths: LengthSystem): readonly string[] {
  const performer =
    target.type === 'mark' ? plan.cast.find(({ id }) => id === target.performerId) : undefined;
  if (target.type !== 'mark' || !performer) return [];
  const crowded = crowdedBy(plan, target);
  const tape = new Set(tapeOf(plan, performer, target.markId).map(({ id }) => id));
  const to = walksOf(performer, plan).find(({ toMark, fromMark }) => tape.has(toMark) && !tape.has(fromMark));
  return [
    ...(crowded ? [`in the place of ${crowded.other.label}`] : []),
    ...(to ? [`walk ${walkWords(to, lengths)}`] : []),
  ];
}
