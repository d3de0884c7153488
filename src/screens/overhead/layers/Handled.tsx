import type { Footprint } from '../../../core/form/fromAbove/footprint';
import type { Plan } from '../../../core/plan/schema/plan';
import type { SnapReason } from '../../../core/plan/snap/types';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { boundsAt } from '../footprintBounds';
import { slantDimension } from '../geometry/dimensions';
import { polygon, polyline } from '../geometry/paths';
import { nearestEdge } from '../geometry/roof';
import { type Bounds, middleOf, type Ring, type Spot } from '../geometry/spots';
import { textWidth } from '../measureText';

interface OutlineProps {
  readonly footprint: Footprint;
  readonly at: (spot: Spot) => Spot;
  readonly kind: 'chosen-ring' | 'focus-ring' | 'hover-ring';
}

/** Least and largest radius of a ring around a thing; a larger thing has its own outline drawn over, pixels. */
const RING_FROM = 15;
const RING_TO = 110;

/** The ring around a thing, pixels; null where its own outline is drawn over instead. */
export function ringOf(footprint: Footprint, at: (spot: Spot) => Spot): Ring | null {
  const bounds = boundsAt(footprint, at);
  if (!bounds || !footprint.closed) return null;
  const radius = Math.max(RING_FROM, Math.hypot(bounds[2] - bounds[0], bounds[3] - bounds[1]) / 2 + 5);
  return radius > RING_TO ? null : { middle: middleOf(bounds), radius };
}

/** What is chosen, focused or pointed at: a ring around a small thing, the outline of a large one. */
export function AroundThing({ footprint, at, kind }: OutlineProps) {
  const ring = ringOf(footprint, at);
  if (ring) return <circle className={kind} cx={ring.middle[0]} cy={ring.middle[1]} r={ring.radius} />;
  const outline = footprint.outline.map(at);
  return <path className={`${kind} along`} d={footprint.closed ? polygon(outline) : polyline(outline)} />;
}

interface ReadoutProps {
  readonly plan: Plan;
  /** What it catches on. */
  readonly why: readonly SnapReason[];
  /** What else there is to say of it. */
  readonly more: readonly string[];
  readonly from: Spot;
  readonly to: Spot;
  readonly lengths: LengthSystem;
  readonly at: (spot: Spot) => Spot;
  readonly pane: Bounds;
  readonly touch: boolean;
}

/** While something is dragged: how far from its old place, and how far from the nearest parapet. */
export function Readout({ plan, why, more, from, to, lengths, at, pane, touch }: ReadoutProps) {
  const [old, now] = [at(from), at(to)];
  const moved = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const edge = nearestEdge(plan, to);
  const { line, ticks } = slantDimension(old, now);
  const away = edge ? `${formatLength(edge.metres, lengths)} from ${edge.of}` : '';
  const caught = why.filter(({ kind }) => kind !== 'grid' && kind !== 'straight').map(({ word }) => word);
  const words = [formatLength(moved, lengths), ...more, away, ...caught]
    .filter((word) => word !== '')
    .join(', ');
  return (
    <g className="readout">
      {edge && <path className="dim-line" d={polyline([now, at(edge.at)])} />}
      {moved > 0 && (
        <>
          <path className="move-line" d={line} />
          <path className="dim-tick" d={ticks} />
        </>
      )}
      {why.map(
        ({ key, guide }) =>
          guide && <path key={key} className="guide" d={polyline(guide.map((spot) => at(spot)))} />,
      )}
      <Chip words={words} over={now} pane={pane} touch={touch} />
    </g>
  );
}

interface ChipProps {
  readonly words: string;
  /** What it speaks of, pixels of the pane. */
  readonly over: Spot;
  readonly pane: Bounds;
  readonly touch: boolean;
}

/** A word beside what the hand is at: above it, so that a finger does not cover it. */
export function Chip({ words, over, pane, touch }: ChipProps) {
  const width = textWidth(words, 'strong', touch) + 18;
  const [left, top] = [
    Math.min(pane[2] - width - 4, Math.max(pane[0] + 4, over[0] - width / 2)),
    over[1] - 58 > pane[1] + 4 ? over[1] - 58 : over[1] + 36,
  ];
  return (
    <g className="chip">
      <rect className="chip-box" x={left} y={top} width={width} height={24} />
      <text className="chip-text" x={left + width / 2} y={top + 16} textAnchor="middle">
        {words}
      </text>
    </g>
  );
}
