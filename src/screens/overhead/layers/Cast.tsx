import { memo, useRef } from 'react';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import type { Performer } from '../../../core/plan/schema/cast';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { polygon, polyline } from '../geometry/paths';
import { distance, headingOf, minus, type Spot, standing } from '../geometry/spots';
import { Mark } from '../symbols/Mark';
import { PerformerSymbol } from '../symbols/PerformerSymbol';
import { useDriver } from '../useDriver';
import { Choice } from './ItemGroup';

/** How far a walk's line stays off the marks, and the size of its arrow, metres. */
const OFF_MARK = 0.28;
const ARROW = { length: 0.26, half: 0.085 };

/** Marks and walks of a performer; drawn anew only when the record changes. */
export const Walks = memo(function Walks({ performer }: { readonly performer: Performer }) {
  const { marks } = performer;
  const walks = marks.slice(1).map((mark, index) => walkBetween(marks[index].at, mark.at));
  return (
    <g className="walks">
      <path className="walk" d={walks.map(({ line }) => line).join('')} />
      <path className="arrow" d={walks.map(({ arrow }) => arrow).join('')} />
      {marks.map((mark) => (
        <Mark key={mark.id} mark={mark} />
      ))}
    </g>
  );
});

function walkBetween(from: Spot, to: Spot): { readonly line: string; readonly arrow: string } {
  const length = distance(from, to);
  if (length < 3 * OFF_MARK) return { line: '', arrow: '' };
  const heading = headingOf(minus(to, from));
  const along = (metres: number, across = 0): Spot => standing(from, heading, [across, -metres]);
  const tip = length - OFF_MARK;
  return {
    line: polyline([along(OFF_MARK), along(tip - ARROW.length)]),
    arrow: polygon([
      along(tip),
      along(tip - ARROW.length, -ARROW.half),
      along(tip - ARROW.length, ARROW.half),
    ]),
  };
}

interface FigureProps {
  readonly performer: Performer;
  readonly spoken: string;
  readonly chosen: boolean;
}

/** A performer where they are at the instant of the clock: moved by the clock itself, without a render. */
export function Figure({ performer, spoken, chosen }: FigureProps) {
  const group = useRef<SVGGElement>(null);
  useDriver(() => {
    const plan = livePlan();
    const now = plan.cast.find(({ id }) => id === performer.id) ?? performer;
    const place = whereabouts(now, plan, liveStore.getState().seconds);
    if (!place) return;
    const [x, , z] = place.at;
    group.current?.setAttribute('transform', `translate(${x} ${z}) rotate(${place.headingDegrees})`);
  });
  if (performer.marks.length === 0) return null;
  return (
    <Choice target={performer.id} spoken={spoken} chosen={chosen} kind="performer">
      <g ref={group}>
        <PerformerSymbol performer={performer} />
      </g>
    </Choice>
  );
}
