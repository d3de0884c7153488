import type { PaletteEntry } from '../../../core/kit/palette';
import { inARow } from '../palette/findEntries';

/** What the next press does, and which keys end and drop it. */
export function ToolHint({ entry, drawing }: { readonly entry: PaletteEntry; readonly drawing: boolean }) {
  const name = inARow(entry.word);
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
