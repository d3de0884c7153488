import { memo, useRef } from 'react';
import { useStore } from 'zustand';
import { walksOf } from '../../../core/form/figure/walks';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import type { Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { seenPlan } from '../../../desk/blocking/onlyIn';
import { nextMark } from '../../../desk/blocking/tape';
import { headingAt } from '../../../desk/blocking/tapeShape';
import { liveStore } from '../../../desk/liveStore';
import { walkDrawing } from '../geometry/along';
import { polygon, polyline } from '../geometry/paths';
import { Mark } from '../symbols/Mark';
import { PerformerSymbol } from '../symbols/PerformerSymbol';
import { useDriver } from '../useDriver';
import { Choice } from './ItemGroup';

interface WalksProps {
  readonly performer: Performer;
  readonly plan: Plan;
  readonly chosen: boolean;
  /** The one mark that is chosen, if it is of this performer. */
  readonly markId: string | null;
}

const facing = (performer: Performer): boolean => performer.marks.some(({ faces }) => faces !== undefined);

/** Marks and walks of a performer; drawn anew only when they change. */
export const Walks = memo(
  function Walks({ performer, plan, chosen, markId }: WalksProps) {
    const group = useRef<SVGGElement>(null);
    useDriver(() => {
      const now = seenPlan();
      const own = now.cast.find(({ id }) => id === performer.id);
      const next = own ? nextMark(now, own, liveStore.getState().seconds) : null;
      for (const tape of group.current?.querySelectorAll('[data-mark]') ?? [])
        tape.classList.toggle('next', tape.getAttribute('data-mark') === next?.id);
    });
    const proposed = useStore(blockingStore, ({ proposing }) => proposing === performer.id);
    const walks = walksOf(performer, plan);
    const drawn = walks.flatMap((walk) => walkDrawing(walk.path) ?? []);
    const fast = walks.flatMap((walk) => (walk.tooFast ? (walkDrawing(walk.path) ?? []) : []));
    return (
      <g className={`walks${chosen ? ' chosen' : ''}${proposed ? ' proposed' : ''}`} ref={group}>
        <path className="walk" d={drawn.map(({ line }) => polyline(line)).join('')} />
        <path className="arrow" d={drawn.map(({ arrow }) => polygon(arrow)).join('')} />
        {fast.length > 0 && (
          <path className="walk too-fast" d={fast.map(({ line }) => polyline(line)).join('')} />
        )}
        {performer.marks.map((mark) => (
          <Mark
            key={mark.id}
            id={mark.id}
            at={mark.at}
            headingDegrees={headingAt(plan, performer, mark)}
            kind={mark.id === markId ? ' picked' : ''}
          />
        ))}
      </g>
    );
  },
  (before, after) =>
    before.performer === after.performer &&
    before.chosen === after.chosen &&
    before.markId === after.markId &&
    walksOf(before.performer, before.plan) === walksOf(after.performer, after.plan) &&
    (before.plan.cast === after.plan.cast || !facing(after.performer)),
);

interface FigureProps {
  readonly performer: Performer;
  readonly spoken: string;
  readonly chosen: boolean;
}

/** A performer where they are at the instant of the clock: moved by the clock itself, without a render. */
export function Figure({ performer, spoken, chosen }: FigureProps) {
  const group = useRef<SVGGElement>(null);
  const proposed = useStore(blockingStore, ({ proposing }) => proposing === performer.id);
  useDriver(() => {
    const plan = seenPlan();
    const now = plan.cast.find(({ id }) => id === performer.id) ?? performer;
    const place = whereabouts(now, plan, liveStore.getState().seconds);
    if (!place) return;
    const [x, , z] = place.at;
    group.current?.setAttribute('transform', `translate(${x} ${z}) rotate(${place.headingDegrees})`);
  });
  if (performer.marks.length === 0) return null;
  return (
    <Choice target={performer.id} spoken={spoken} chosen={chosen} kind="performer">
      <g ref={group} className={proposed ? 'proposed' : undefined}>
        <PerformerSymbol performer={performer} />
      </g>
    </Choice>
  );
}
