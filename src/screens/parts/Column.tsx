import { type ReactNode, useEffect, useRef, useState } from 'react';

/** Less than this below the edge is no line of text, pixels. */
const LEAST = 12;
/** How much of a window a press goes on: the last line stays in sight. */
const STEP_SHARE = 0.8;

/** One column of a sheet. Where it is longer than its room, a line at its foot says so and goes on. */
export function Column({ children }: { readonly children: ReactNode }) {
  const column = useRef<HTMLDivElement>(null);
  const inside = useRef<HTMLDivElement>(null);
  const [more, setMore] = useState(false);
  useEffect(() => {
    const outer = column.current;
    if (!outer || !inside.current) return;
    const look = (): void => {
      const below = outer.scrollHeight - outer.clientHeight - outer.scrollTop;
      setMore(getComputedStyle(outer).overflowY === 'auto' && below > LEAST);
    };
    const observer = new ResizeObserver(look);
    observer.observe(outer);
    observer.observe(inside.current);
    outer.addEventListener('scroll', look, { passive: true });
    return () => {
      observer.disconnect();
      outer.removeEventListener('scroll', look);
    };
  }, []);
  const goOn = (): void => column.current?.scrollBy({ top: column.current.clientHeight * STEP_SHARE });
  return (
    <div className="column" ref={column}>
      <div ref={inside}>{children}</div>
      {more ? (
        // Whoever goes by keys or by ear comes to the rows themselves.
        <div className="more-below" aria-hidden="true">
          <button type="button" tabIndex={-1} onClick={goOn}>
            <svg viewBox="0 0 12 8" aria-hidden="true">
              <path d="M1 1.5 6 6.5 11 1.5" />
            </svg>
            more below
          </button>
        </div>
      ) : null}
    </div>
  );
}
