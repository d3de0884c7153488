import { useState } from 'react';
import { createPortal } from 'react-dom';
import { usePlanState, useSession } from '../../../desk/hooks';
import { change } from '../../actions/doing';
import type { Pane } from '../geometry/sheet';
import type { Spot } from '../geometry/spots';
import { figureAt } from './Grip';
import type { Handle } from './types';

/** The field that a handle's value is typed into: Enter takes it, Escape leaves it as it was. */
export function FigureInput({
  handle,
  at,
  board,
  done,
}: {
  readonly handle: Handle;
  readonly at: Spot;
  readonly board: Element;
  readonly done: () => void;
}) {
  const plan = usePlanState((state) => state.plan);
  const lengths = useSession((state) => state.lengths);
  const [text, setText] = useState(handle.figure ?? '');
  const [fault, setFault] = useState<string | null>(null);
  const take = (): void => {
    const typed = text === handle.figure ? plan : handle.typed?.(plan, text, lengths);
    if (typeof typed === 'string') {
      setFault(typed);
      return;
    }
    if (typed && typed !== plan) change(historyName(handle), () => typed);
    done();
  };
  return createPortal(
    <form
      className="figure-input"
      style={{ left: at[0], top: at[1] }}
      onSubmit={(event) => {
        event.preventDefault();
        take();
      }}
      onKeyDown={(event) => {
        event.stopPropagation();
        if (event.key !== 'Escape') return;
        event.preventDefault();
        done();
      }}
    >
      <input
        type="text"
        aria-label={handle.name}
        aria-invalid={fault !== null}
        autoComplete="off"
        value={text}
        ref={(input) => {
          if (input && document.activeElement !== input) input.select();
          input?.focus({ preventScroll: true });
        }}
        onChange={(event) => setText(event.currentTarget.value)}
        onBlur={done}
      />
      {fault !== null && <p role="alert">{fault}</p>}
    </form>,
    board,
  );
}

/** What the history calls a pull of a handle. */
export const historyName = ({ name }: Handle): string => name.charAt(0).toLowerCase() + name.slice(1);

/** Size of the field, pixels, for it to lie within the pane. */
const FIELD = { width: 112, height: 36 };

/** Where the field comes: over the figure, within the pane. */
export function figureAtBoard(handle: Spot, pane: Pane): Spot {
  const [x, y] = figureAt(handle);
  return [
    Math.max(4, Math.min(x - 4, pane.width - FIELD.width - 4)),
    Math.max(4, Math.min(y - FIELD.height / 2 - 4, pane.height - FIELD.height - 4)),
  ];
}
