import { useId, useRef, useState } from 'react';
import { renamePlan } from '../../desk/plans/managing';
import { doing } from './doing';

/** The title of a plan, being typed: Enter or leaving it takes it, Escape gives it back. */
export function RenameField(props: {
  readonly planId: string;
  readonly title: string;
  readonly done: () => void;
}) {
  const { planId, title, done } = props;
  const [typed, setTyped] = useState(title);
  const [fault, setFault] = useState<string | null>(null);
  const given = useRef(false);
  const id = useId();
  const take = (): void => {
    if (given.current) return;
    given.current = true;
    doing(async () => {
      const sentence = typed === title ? null : await renamePlan(planId, typed);
      if (sentence === null) done();
      else {
        given.current = false;
        setFault(sentence);
      }
    });
  };
  return (
    <div className="rename">
      <div className={fault === null ? 'field' : 'field bad'}>
        <label htmlFor={id}>title</label>
        <span className="value">
          <input
            id={id}
            ref={(input) => input?.focus()}
            type="text"
            autoComplete="off"
            value={typed}
            aria-invalid={fault !== null}
            aria-describedby={fault === null ? undefined : `${id}-fault`}
            onFocus={(event) => event.currentTarget.select()}
            onChange={(event) => setTyped(event.currentTarget.value)}
            onBlur={take}
            onKeyDown={(event) => {
              if (event.key === 'Enter') take();
              if (event.key !== 'Escape') return;
              // The list stays open.
              event.preventDefault();
              event.stopPropagation();
              given.current = true;
              done();
            }}
          />
        </span>
      </div>
      {fault === null ? null : (
        <p className="err" id={`${id}-fault`} role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}
