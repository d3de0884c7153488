import { useStore } from 'zustand';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatLength } from '../../../core/units/lengths';
import { proposalStore } from '../../../desk/lensTestProposal';
import { CameraSymbol } from '../symbols/CameraSymbol';
import type { SheetView } from '../useSheetView';
import '../styles/proposed.css';

/** Off the line, pixels. */
const WORDS_OFF = 8;

/** Where a camera would stand for the same framing on another lens: dashed, with how far it goes. In pixels. */
export function ProposedPlace({
  sheet,
  lengths,
}: {
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
}) {
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
