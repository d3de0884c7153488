import { useEffect, useRef } from 'react';

/**
 * Where a press took what had the focus away with it, such as the button itself, gives the focus to what stands there
 * now, so that whoever goes by keys keeps their place. It looks whenever the state changes; what has the focus keeps it.
 */
export function useFocusGoesOn(state: unknown, next: () => HTMLElement | null | undefined): void {
  const before = useRef(state);
  const latest = useRef(next);
  latest.current = next;
  useEffect(() => {
    if (before.current === state) return;
    before.current = state;
    if (document.activeElement === document.body) latest.current()?.focus();
  }, [state]);
}
