import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { useLive } from '../../../desk/hooks';
import { explainStore, explanationNow } from '../../../desk/remedies/explaining';
import { polygon, polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import type { SheetView } from '../useSheetView';
import { type SightNote, sightOnPlan } from './sightOnPlan';
import './explain.css';

/** Radius of the mark where a line ends, half the side of the others, and how far off its words begin; pixels. */
const DOT = 3.5;
const MARK = 5;
const OFF = 9;
/** The words of the end stand to its left, clear of the ring and the name of what is chosen. */
const END_OFF = 30;
const LINE = 15;

interface Props {
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly seconds: number;
  readonly lengths: LengthSystem;
}

/** Where a line of sight ends, turns or is stopped: a dot, a lozenge, a bar. */
function mark({ kind }: SightNote, [x, y]: Spot) {
  if (kind === 'end') return <circle className="sight-end" cx={x} cy={y} r={DOT} />;
  if (kind === 'mirror')
    return (
      <path
        className="sight-turn"
        d={`M${x - MARK} ${y}L${x} ${y - MARK}L${x + MARK} ${y}L${x} ${y + MARK}Z`}
      />
    );
  return (
    <path
      className="sight-stop"
      d={`M${x - MARK} ${y - MARK}L${x + MARK} ${y + MARK}M${x + MARK} ${y - MARK}L${x - MARK} ${y + MARK}`}
    />
  );
}

/** Why an item has its verdict: the line of sight, the frame that it crosses, what turns or hides it. In pixels. */
export function ExplainLayer({ plan, sheet, seconds, lengths }: Props) {
  useStore(explainStore);
  useLive((state) => state.playing);
  const told = explanationNow(plan, seconds);
  const drawn = told && sightOnPlan(plan, told, lengths);
  if (!drawn) return null;
  const { at } = sheet;
  const line = (spots: readonly Spot[]): string => polyline(spots.map(at));
  // Words of two places that are one under the other would lie on each other.
  const notes = drawn.notes.map((note, k) => {
    const [x, y] = at(note.at);
    const before = drawn.notes.slice(0, k).some((other) => Math.abs(at(other.at)[1] - y) < LINE);
    const words: Spot = [note.kind === 'end' ? x - END_OFF : x + OFF, y + (before ? LINE + 4 : 4)];
    return { note, spot: [x, y] as Spot, words };
  });
  return (
    <g className={`sight sight-${drawn.kind}`}>
      <path className="sight-edge" d={drawn.edges.map(line).join('')} />
      <path className="sight-frame" d={polygon(drawn.frame.map(at))} />
      <path className="sight-line" d={line(drawn.seen)} />
      {drawn.hidden.length > 0 && <path className="sight-hidden" d={line(drawn.hidden)} />}
      {notes.map(({ note, spot, words }) => (
        <g key={note.kind}>
          {mark(note, spot)}
          <text x={words[0]} y={words[1]} textAnchor={note.kind === 'end' ? 'end' : 'start'}>
            {note.words}
          </text>
        </g>
      ))}
    </g>
  );
}
