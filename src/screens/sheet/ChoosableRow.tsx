import { type ReactNode, useEffect, useRef } from 'react';

/** In one column of a phone the page would leave what the finger is on. */
const BESIDE = '(min-width: 768px)';

/** A row of a list that is one target. Chosen elsewhere, on the roof say, it comes into sight. */
export function ChoosableRow(props: {
  readonly chosen: boolean;
  readonly onChoose: () => void;
  /** Whether what belongs to it is unfolded under it; left out where there is nothing of that. */
  readonly expanded?: boolean;
  readonly children: ReactNode;
}) {
  const { chosen } = props;
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen && matchMedia(BESIDE).matches) row.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <li ref={row} aria-current={chosen ? 'true' : undefined}>
      <button
        type="button"
        onClick={props.onChoose}
        {...(props.expanded === undefined ? {} : { 'aria-expanded': props.expanded })}
      >
        {props.children}
      </button>
    </li>
  );
}
