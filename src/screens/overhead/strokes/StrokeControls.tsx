import { dropStroke, endStroke, putDown, takeBackCorner } from '../../../desk/tools/drawing';
import { entryOf } from '../../../desk/tools/making';
import { useTool } from '../../../desk/tools/useTool';
import { textWidth } from '../measureText';
import { EntryChip } from './EntryChip';
import { type HandProps, legOf } from './Hand';
import { buttonsBy, CHIP_HEIGHT, kept } from './layout';

/** Width of the chip while it is typed in, and of a sentence beside it, pixels. */
const ENTRY_WIDTH = 104;
const SENTENCE_WIDTH = 220;

/** What of a stroke can be typed in or pressed: the entry on the drawing, why something was refused, buttons for a finger. */
export function StrokeControls(props: HandProps) {
  const entry = useTool((state) => state.entry);
  const refusal = useTool((state) => state.refusal);
  const { stroke, sheet, pane, tool } = props;
  const hand = stroke.next ?? stroke.corners.at(-1) ?? null;
  const place = hand ? sheet.at(hand) : ([pane[2] / 2, pane[3] / 2] as const);
  const leg = legOf(props);
  const chip = leg?.drawing.chip ?? [place[0], place[1] + 24, place[0], place[1] + 24 + CHIP_HEIGHT];
  const middle = (chip[0] + chip[2]) / 2;
  const [left, top] = kept(
    [middle - ENTRY_WIDTH / 2, chip[1] - 3, middle + ENTRY_WIDTH / 2, chip[1] + CHIP_HEIGHT + 3],
    pane,
  );
  const sentence = entry?.fault ?? refusal;
  const lines =
    sentence === null ? 0 : Math.ceil(textWidth(sentence, 'strong', false) / (SENTENCE_WIDTH - 28));
  const under = entry ? [left, top + CHIP_HEIGHT + 10] : [place[0] - SENTENCE_WIDTH / 2, place[1] + 30];
  const note = kept([under[0], under[1], under[0] + SENTENCE_WIDTH, under[1] + 18 + 18 * lines], pane);
  const corner = stroke.corners.at(-1);
  const how = entryOf(tool)?.how;
  const goesOn = how === 'run' || how === 'outline';
  return (
    <>
      {entry && <EntryChip place={{ left, top, width: ENTRY_WIDTH }} />}
      {sentence !== null && (
        <p
          className="stroke-refusal"
          role="alert"
          style={{ left: note[0], top: note[1], width: SENTENCE_WIDTH }}
        >
          {sentence}
        </p>
      )}
      {corner && <FingerButtons at={sheet.at(corner)} pane={pane} goesOn={goesOn} />}
      {!corner && (
        <div className="finger-buttons at-edge">
          <button type="button" onClick={putDown}>
            Put it down
          </button>
        </div>
      )}
    </>
  );
}

/** For a finger, which has no keys: beside the last corner, within the pane. */
function FingerButtons({
  at,
  pane,
  goesOn,
}: {
  readonly at: readonly [number, number];
  readonly pane: HandProps['pane'];
  readonly goesOn: boolean;
}) {
  const [left, top] = buttonsBy(at, pane);
  return (
    <div className="finger-buttons" style={{ left, top }}>
      {goesOn && (
        <button type="button" className="do" onClick={() => endStroke()}>
          End
        </button>
      )}
      <button type="button" onClick={takeBackCorner}>
        Take back
      </button>
      <button type="button" onClick={dropStroke}>
        Drop
      </button>
    </div>
  );
}
