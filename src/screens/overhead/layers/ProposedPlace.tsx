import { useStore } from 'zustand';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatLength } from '../../../core/units/lengths';
import { proposalStore } from '../../../desk/lensTestProposal';
import { CameraSymbol } from '../symbols/CameraSymbol';
import type { SheetView } from '../useSheetView';
import '../styles/proposed.css';

/** Off the line, pixels. */
const WORDS_OFF = 8;

/** Round the place of what would stand there, and how far under it its words lie: clear of the ring and the name of what is chosen; pixels. */
const RING = 9;
const WORDS_UNDER = 44;

interface Props {
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
}

/** Where a camera or a stand would go: dashed, with how far that is. In pixels. */
export function ProposedPlace(props: Props) {
  return (
    <>
      <ProposedCamera {...props} />
      <ProposedStands {...props} />
    </>
  );
}

function ProposedStands({ sheet, lengths }: Props) {
  const stands = useStore(proposalStore, (state) => state.stands);
  return stands.map(({ from, to, label, words }) => {
    const [ax, ay] = sheet.at([from[0], from[1]]);
    const [bx, by] = sheet.at([to[0], to[1]]);
    const metres = Math.hypot(to[0] - from[0], to[1] - from[1]);
    return (
      <g key={label} className="proposed-place">
        <path className="proposed-way" d={`M${ax} ${ay}L${bx} ${by}`} />
        <circle className="proposed-way" cx={bx} cy={by} r={RING} />
        <text className="name strong" x={bx} y={by + WORDS_UNDER} textAnchor="middle">
          {`${label}, ${words ?? formatLength(metres, lengths)}`}
        </text>
      </g>
    );
  });
}

function ProposedCamera({ sheet, lengths }: Props) {
  const place = useStore(proposalStore, (state) => state.place);
  if (!place) return null;
  const [ax, ay] = sheet.at([place.from[0], place.from[1]]);
  const [bx, by] = sheet.at([place.to[0], place.to[1]]);
  const metres = Math.hypot(place.to[0] - place.from[0], place.to[1] - place.from[1]);
  return (
    <g className="proposed-place">
      <path className="proposed-way" d={`M${ax} ${ay}L${bx} ${by}`} />
      <g
        className="to-scale"
        transform={`translate(${bx} ${by}) scale(${sheet.perMetre}) rotate(${place.headingDegrees})`}
      >
        <CameraSymbol />
      </g>
      <text className="name strong" x={bx + WORDS_OFF * 2} y={by + WORDS_OFF * 2}>
        {`${place.letter}, ${formatLength(metres, lengths)}`}
      </text>
    </g>
  );
}
