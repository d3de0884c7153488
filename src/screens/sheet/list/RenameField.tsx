import { useEffect, useRef, useState } from 'react';
import { renameItem } from '../../../core/plan/edits/renameItem';
import { editPlan } from '../fields/edit';

/** The name of a row, typed in its place: Enter or leaving it takes the name, Escape gives the old one back. */
export function RenameField(props: {
  readonly id: string;
  readonly label: string;
  readonly onDone: () => void;
}) {
  const { id, label, onDone } = props;
  const input = useRef<HTMLInputElement>(null);
  const left = useRef(false);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => input.current?.select(), []);
  const take = (): void => {
    if (left.current) return;
    const text = input.current?.value.trim() ?? '';
    const sentence =
      text === label ? null : editPlan('rename', (plan) => renameItem(plan, { id, label: text }));
    setFault(sentence);
    if (sentence !== null) return;
    left.current = true;
    onDone();
  };
  return (
    <span className="renaming">
      <input
        ref={input}
        aria-label={`new name of ${label}`}
        aria-invalid={fault !== null}
        defaultValue={label}
        autoComplete="off"
        onBlur={() => {
          // Left with a name that cannot be, the old one stands.
          take();
          if (!left.current) onDone();
        }}
        onKeyDown={(event) => {
          event.stopPropagation();
          if (event.key === 'Enter') take();
          if (event.key !== 'Escape') return;
          left.current = true;
          onDone();
        }}
      />
      {fault === null ? null : (
        <span className="err" role="alert">
          {fault}
        </span>
      )}
    </span>
  );
}
