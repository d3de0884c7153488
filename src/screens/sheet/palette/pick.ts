import type { PaletteEntry } from '../../../core/kit/palette';
import { sessionStore } from '../../../desk/sessionStore';
import { pickTool, putDown } from '../../../desk/tools/drawing';
import { type ToolState, toolStore } from '../../../desk/tools/toolStore';

const ONE_COLUMN = '(max-width: 767px)';

/** The id of the entry that is in the hand, or null. */
export const pickedEntryId = ({ tool }: ToolState): string | null =>
  'entryId' in tool ? tool.entryId : null;

/** Takes an entry into the hand; the one that is there already is put down. */
export function pickEntry({ id, how }: PaletteEntry): void {
  if (pickedEntryId(toolStore.getState()) === id) {
    putDown();
    return;
  }
  // The panel speaks of what is in the hand, and afterwards of what it made.
  sessionStore.getState().setSelectedId(null);
  pickTool({ type: how === 'spot' ? 'put' : 'draw', entryId: id });
  if (matchMedia(ONE_COLUMN).matches) showRoof();
}

/** In one column the roof may lie out of sight, and the next press belongs there. */
function showRoof(): void {
  const roof = document.querySelector('.roof');
  const page = roof?.closest('.rest');
  // The page scrolls within its own frame: scrolling into view would move what lies around that, too.
  if (roof && page) page.scrollTop += roof.getBoundingClientRect().top - page.getBoundingClientRect().top;
}
