import { memo, useRef } from 'react';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import { stateAt } from '../../../core/optics/camera';
import { livePlan, liveStore } from '../../../desk/liveStore';
import type { PlacedLabel } from '../geometry/labels';
import type { Spot } from '../geometry/spots';
import type { Lettering } from '../measureText';
import { SKYLINE } from '../skyline';
import { useDriver } from '../useDriver';

export interface WrittenLabel extends PlacedLabel {
  readonly style: Lettering;
  readonly quiet: boolean;
  readonly chosen: boolean;
}

interface Props {
  readonly labels: readonly WrittenLabel[];
  /** The instant that the labels were placed for. */
  readonly seconds: number;
  readonly perMetre: number;
}

/** The names, each in its place; those of what moves with the clock go along with it. */
export function LetteringLayer({ labels, seconds, perMetre }: Props) {
  return (
    <g className="lettering">
      {labels.map((label) => (
        <Name key={label.id} label={label} seconds={seconds} perMetre={perMetre} />
      ))}
    </g>
  );
}

interface NameProps {
  readonly label: WrittenLabel;
  readonly seconds: number;
  readonly perMetre: number;
}

const Name = memo(
  function Name({ label, seconds, perMetre }: NameProps) {
    const group = useRef<SVGGElement>(null);
    useDriver(() => {
      const [from, to] = [movingSpot(label.id, seconds), movingSpot(label.id, liveStore.getState().seconds)];
      if (!from || !to) return;
      const by = `translate(${(to[0] - from[0]) * perMetre} ${(to[1] - from[1]) * perMetre})`;
      group.current?.setAttribute('transform', by);
    });
    const [left, top, right, bottom] = label.bounds;
    const baseline = bottom - (label.style === 'letter' ? 2.5 : 3);
    return (
      <g
        ref={group}
        className={`name ${label.style}${label.quiet ? ' quiet' : ''}${label.chosen ? ' plate' : ''}${label.id === SKYLINE ? ' beyond' : ''}`}
      >
        {label.chosen && label.style !== 'letter' && (
          <rect x={left - 3} y={top - 1} width={right - left + 6} height={bottom - top + 2} />
        )}
        <text x={(left + right) / 2} y={baseline} textAnchor="middle">
          {label.text}
        </text>
      </g>
    );
  },
  (a, b) =>
    a.perMetre === b.perMetre &&
    a.seconds === b.seconds &&
    a.label.text === b.label.text &&
    a.label.style === b.label.style &&
    a.label.chosen === b.label.chosen &&
    a.label.bounds.every((value, side) => value === b.label.bounds[side]),
);

/** Where a performer or a camera is at an instant; null for what stands still. */
function movingSpot(id: string, seconds: number): Spot | null {
  const plan = livePlan();
  if (id.startsWith('camera:')) {
    const setup = plan.setups.find((each) => `camera:${each.id}` === id);
    if (!setup) return null;
    const { position } = stateAt(plan, setup, seconds);
    return [position[0], position[2]];
  }
  const performer = plan.cast.find((each) => each.id === id);
  const place = performer ? whereabouts(performer, plan, seconds) : null;
  return place ? [place.at[0], place.at[2]] : null;
}
