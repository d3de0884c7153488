import { useEffect, useRef } from 'react';
import type { LengthSystem } from '../../../core/units/lengths';
import { useSession } from '../../../desk/hooks';
import { changeEntry, dropEntry, finishEntry, switchEntry } from '../../../desk/tools/typing';
import { useTool } from '../../../desk/tools/useTool';

/** Where it lies on the drawing, pixels; left to the style sheet where there is no drawing. */
interface Place {
  readonly left?: number;
  readonly top?: number;
  readonly width?: number;
}

/** A length or a bearing typed on the drawing: Tab goes from one to the other, Enter takes the corner, Escape lets go. */
export function EntryChip({ place = {} }: { readonly place?: Place }) {
  const entry = useTool((state) => state.entry);
  const input = useRef<HTMLInputElement>(null);
  const field = entry?.field;
  useEffect(() => {
    const element = input.current;
    if (!element || field === undefined) return;
    const before = document.activeElement;
    element.focus();
    // A digit that opened it is written already: typing goes on behind it.
    element.setSelectionRange(element.value.length, element.value.length);
    return () => {
      if (before instanceof HTMLElement || before instanceof SVGElement)
        before.focus({ preventScroll: true });
    };
  }, [field]);
  const lengths = useSession((state) => state.lengths);
  if (!entry) return null;
  const word = WORDS[entry.field];
  return (
    <div className={`stroke-entry${entry.fault === null ? '' : ' bad'}`} style={place}>
      <label>
        <span className="vh">{word}</span>
        <input
          ref={input}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          value={entry.text}
          aria-invalid={entry.fault !== null}
          onChange={(event) => changeEntry(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') finishEntry();
            else if (event.key === 'Tab') switchEntry();
            else if (event.key === 'Escape') dropEntry();
            else return;
            event.preventDefault();
            event.stopPropagation();
          }}
        />
      </label>
      <span aria-hidden="true">{unitOf(entry.field, entry.text, lengths)}</span>
    </div>
  );
}

const WORDS = {
  length: 'length of the leg',
  bearing: 'bearing of the leg',
  distance: 'distance as it was measured',
} as const;

/** What a bare number is in; a unit that is typed stands for itself. */
function unitOf(field: keyof typeof WORDS, text: string, lengths: LengthSystem): string {
  if (!/^[\d.,\s]*$/.test(text)) return '';
  return field === 'bearing' ? '°' : lengths === 'm' ? 'm' : 'ft';
}
