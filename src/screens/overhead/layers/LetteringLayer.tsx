import { memo, useRef } from 'react';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import { stateAt } from '../../../core/optics/camera';
import { endsOfPair } from '../../../desk/blocking/lines';
import { seenPlan } from '../../../desk/blocking/onlyIn';
import { liveStore } from '../../../desk/liveStore';
import type { PlacedLabel } from '../geometry/labels';
import { between, type Spot } from '../geometry/spots';
import { SIGN } from '../letteredWish';
import type { Lettering } from '../measureText';
import { SKYLINE } from '../skyline';
import { useDriver } from '../useDriver';

export interface WrittenLabel extends PlacedLabel {
  readonly style: Lettering;
  readonly quiet: boolean;
  readonly fault: boolean;
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
        className={`name ${label.style}${label.quiet ? ' quiet' : ''}${label.chosen ? ' plate' : ''}${label.id === SKYLINE ? ' beyond' : ''}${label.fault ? ' fault' : ''}`}
      >
        {label.chosen && label.style !== 'letter' && (
          <rect x={left - 3} y={top - 1} width={right - left + 6} height={bottom - top + 2} />
        )}
        {label.fault && <FaultSign at={[left + SIGN / 2 - 1, (top + bottom) / 2]} />}
        <text x={(left + right + (label.fault ? SIGN : 0)) / 2} y={baseline} textAnchor="middle">
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
    a.label.fault === b.label.fault &&
    a.label.quiet === b.label.quiet &&
    a.label.bounds.every((value, side) => value === b.label.bounds[side]),
);

/** A triangle on its side of a fault's words: what is wrong has a form, too. */
export function FaultSign({ at: [x, y] }: { readonly at: Spot }) {
  return (
    <g className="fault-sign" transform={`translate(${x} ${y})`}>
      <path d="M0 -5.5L5.5 4.5H-5.5Z" />
      <path className="bar" d="M0 -2V1.2M0 2.6V3.2" />
    </g>
  );
}

/** Where a performer, a camera or the middle of a line is at an instant; null for what stands still. */
function movingSpot(id: string, seconds: number): Spot | null {
  const plan = seenPlan();
  const [kind, one, other] = id.split(':');
  if (kind === 'line' && one !== undefined && other !== undefined) {
    const ends = endsOfPair(plan, [one, other], seconds);
    return ends && between(ends[0], ends[1], 0.5);
  }
  if (kind === 'camera' || kind === 'over') {
    const setup = plan.setups.find((each) => each.id === one);
    if (!setup) return null;
    const { position } = stateAt(plan, setup, seconds);
    return [position[0], position[2]];
  }
  const performer = plan.cast.find((each) => each.id === id);
  const place = performer ? whereabouts(performer, plan, seconds) : null;
  return place ? [place.at[0], place.at[2]] : null;
}
