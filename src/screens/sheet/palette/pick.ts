import type { PaletteEntry } from '../../../core/kit/palette';
import { sessionStore } from '../../../desk/sessionStore';
import { pickTool, putDown } from '../../../desk/tools/drawing';
import { type ToolState, toolStore } from '../../../desk/tools/toolStore';

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
}
