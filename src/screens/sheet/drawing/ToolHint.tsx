import type { PaletteEntry } from '../../../core/kit/palette';
import { inARow } from '../palette/findEntries';

/** What the next press does, and which keys end and drop it. */
export function ToolHint({ entry, drawing }: { readonly entry: PaletteEntry; readonly drawing: boolean }) {
  const name = inARow(entry.word);
  if (matchMedia('(pointer: coarse)').matches) return touchHint(entry, drawing);
  if (entry.how === 'spot')
    return (
      <>
        Click where it goes, drag to turn it. <kbd>Esc</kbd> puts it down again.
      </>
    );
  if (!drawing)
    return (
      <>
        Click where it begins, or drag from there. <kbd>Esc</kbd> puts it down again.
      </>
    );
  if (entry.how === 'ends')
    return (
      <>
        Click where it ends, or type a length. <kbd>Esc</kbd> drops it.
      </>
    );
  return (
    <>
      Click for a corner, <kbd>E</kbd> or a double click ends the {name}, <kbd>Esc</kbd> drops it.
    </>
  );
}

/** The same for a finger, which has no keys and buttons beside the last corner. */
function touchHint({ how }: PaletteEntry, drawing: boolean): string {
  if (how === 'spot') return 'Tap where it goes, or draw the crosshair there.';
  if (!drawing) return 'Tap where it begins, or draw the crosshair there.';
  if (how === 'ends') return 'Tap where it ends, or type a length.';
  return 'Tap a corner, or type a length and take the corner. End stands beside the last one.';
}
