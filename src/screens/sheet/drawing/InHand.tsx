import { putDown } from '../../../desk/tools/drawing';
import { entryOf } from '../../../desk/tools/making';
import { useTool } from '../../../desk/tools/useTool';
import { inARow } from '../palette/findEntries';

/** Over what was put last: that another one is in the hand already. */
export function InHand() {
  const entry = useTool(({ tool }) => entryOf(tool));
  return (
    <p className="in-hand">
      <span>
        {entry ? `Another ${inARow(entry.word)} is in the hand.` : 'The tool is in the hand.'} <kbd>Esc</kbd>
      </span>
      <button type="button" className="link" onClick={putDown}>
        Put it down
      </button>
    </p>
  );
}
