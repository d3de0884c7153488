import { type KeyboardEvent, useRef, useState } from 'react';
import type { PaletteEntry } from '../../../core/kit/palette';
import { beginPaletteDrag } from '../../../desk/tools/paletteDrag';
import { useTool } from '../../../desk/tools/useTool';
import { Icon, type IconName, iconNamed } from '../../parts/Icon';
import { extrasOf } from './extras';
import { type EntryGroup, inARow } from './findEntries';
import { pickEntry, pickedEntryId } from './pick';
import { cellFrom } from './roving';

/** An icon of its own, else that of its kind. */
const iconOf = (entry: PaletteEntry): IconName => {
  const own = iconNamed(entry.id);
  return own === 'box' ? iconNamed(entry.icon) : own;
};

/**
 * All that can be put on the roof, as ruled tables of icon and word under their headings. A click or Enter picks it up,
 * a drag puts it down where it ends; the arrows go from cell to cell, and Tab past them all.
 */
export function PaletteGrid({
  groups,
  words,
}: {
  readonly groups: readonly EntryGroup[];
  readonly words: readonly string[];
}) {
  const picked = useTool(pickedEntryId);
  const [reachable, setReachable] = useState<string | null>(null);
  const grid = useRef<HTMLDivElement>(null);
  const ids = groups.flatMap(({ group, entries }) => [
    ...entries.map(({ id }) => id),
    ...extrasOf(group, words).map(({ id }) => id),
  ]);
  const stop = [reachable, picked].find((id) => id !== null && ids.includes(id)) ?? ids[0];

  const walk = (event: KeyboardEvent): void => {
    const cells = [...(grid.current?.querySelectorAll<HTMLElement>('button') ?? [])];
    const at = cells.findIndex((cell) => cell.contains(document.activeElement));
    const to = cellFrom(
      cells.map((cell) => cell.getBoundingClientRect()),
      at,
      event.key,
    );
    if (to === null) return;
    event.preventDefault();
    cells[to]?.focus();
  };

  return (
    // The keys are those of the cells inside: the group itself takes no focus.
    <div className="palette" ref={grid} role="toolbar" aria-label="Palette" onKeyDown={walk}>
      {groups.map(({ group, entries }) => (
        <section key={group}>
          <h4 className="stays">{group}</h4>
          <div className="cells">
            {entries.map((entry) => (
              <button
                key={entry.id}
                type="button"
                tabIndex={entry.id === stop ? 0 : -1}
                aria-pressed={entry.id === picked}
                onFocus={() => setReachable(entry.id)}
                onClick={() => pickEntry(entry)}
                onPointerDown={(event) => beginPaletteDrag(entry.id, event)}
              >
                <Icon name={iconOf(entry)} />
                <span>{inARow(entry.word)}</span>
              </button>
            ))}
            {extrasOf(group, words).map((extra) => (
              <button
                key={extra.id}
                type="button"
                tabIndex={extra.id === stop ? 0 : -1}
                aria-label={extra.name}
                onFocus={() => setReachable(extra.id)}
                onClick={extra.act}
              >
                <Icon name={extra.icon} />
                <span>{extra.word}</span>
              </button>
            ))}
          </div>
        </section>
      ))}
    </div>
  );
}
