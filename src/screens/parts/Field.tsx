import { type KeyboardEvent, type ReactNode, useId, useState } from 'react';
import { planStore } from '../../desk/planStore';
import { Glyph } from './Glyph';

const undoes = ({ ctrlKey, metaKey, altKey, key }: KeyboardEvent): boolean =>
  (ctrlKey || metaKey) && !altKey && key.toLowerCase() === 'z';

/**
 * A value on a line, typed and committed by Enter or by leaving it, given back by Escape. `commit` returns
 * a sentence that says what would work, or null when the value was taken.
 */
export function Field(props: {
  readonly label: string;
  readonly text: string;
  readonly unit?: string;
  readonly wide?: boolean;
  /** Stands where there is no text: what several chosen things differ in is `mixed`. */
  readonly empty?: string;
  readonly commit: (text: string) => string | null;
  /** Called when what was there stands again. */
  readonly onGivenBack?: () => void;
}) {
  const { label, text, unit, empty, commit, onGivenBack } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<{ readonly text: string; readonly sentence: string } | null>(null);
  const id = useId();
  // A value that changed elsewhere (a drag, an undo) makes an old fault pointless.
  const fault = refused?.text === text ? refused.sentence : null;

  const giveBack = (): void => {
    setTyped(null);
    setRefused(null);
    onGivenBack?.();
  };
  const done = (): void => {
    if (typed === null) return;
    if (typed === text) {
      giveBack();
      return;
    }
    const sentence = commit(typed);
    setRefused(sentence === null ? null : { text, sentence });
    if (sentence === null) setTyped(null);
  };

  return (
    <div className={props.wide ? 'wide' : undefined}>
      <div className={fault === null ? 'field' : 'field bad'}>
        <label htmlFor={id}>{label}</label>
        <span className="value">
          <input
            id={id}
            type="text"
            autoComplete="off"
            value={typed ?? text}
            placeholder={empty}
            aria-invalid={fault !== null}
            aria-describedby={fault === null ? undefined : `${id}-fault`}
            onFocus={(event) => event.currentTarget.select()}
            onChange={(event) => setTyped(event.currentTarget.value)}
            onBlur={done}
            onKeyDown={(event) => {
              if (event.key === 'Enter') done();
              // With nothing typed that waits, undo is the plan's: the browser's own would know nothing of it.
              if (typed === null && undoes(event)) {
                event.preventDefault();
                const { undo, redo } = planStore.getState();
                if (event.shiftKey) redo();
                else undo();
              }
              if (event.key !== 'Escape') return;
              event.stopPropagation();
              // A sheet that the field stands on stays, while there is something to give back.
              if (typed !== null) event.preventDefault();
              giveBack();
            }}
          />
          {unit ? <span className="unit">{unit}</span> : null}
        </span>
      </div>
      {fault === null ? null : (
        <p className="err" id={`${id}-fault`} role="alert">
          <Glyph verdict="showing" />
          {fault}
        </p>
      )}
    </div>
  );
}

/** What is known of a thing and not typed, on a line like a field. */
export function ShownField(props: {
  readonly label: string;
  readonly text: string;
  readonly wide?: boolean;
}) {
  return (
    <div className={props.wide ? 'wide' : undefined}>
      <div className="field shown">
        <span className="q">{props.label}</span>
        <span className="value">{props.text}</span>
      </div>
    </div>
  );
}

/** A choice on a line, like a field. */
export function SelectField(props: {
  readonly label: string;
  readonly value: string;
  readonly wide?: boolean;
  readonly onChange: (value: string) => void;
  readonly children: ReactNode;
}) {
  const id = useId();
  return (
    <div className={props.wide ? 'wide' : undefined}>
      <div className="field">
        <label htmlFor={id}>{props.label}</label>
        <select id={id} value={props.value} onChange={(event) => props.onChange(event.currentTarget.value)}>
          {props.children}
        </select>
      </div>
    </div>
  );
}
