import { type RefObject, useEffect, useRef } from 'react';
import { useFocusGoesOn } from '../../parts/useFocusGoesOn';
import type { Chosen } from './rows';

/** How a row of the list is found in the page. */
export const rowKey = ({ where, id }: Chosen): string => `${where} ${id}`;

/**
 * Where the focus is as something else is chosen: what was just added is to be named; else, where what had it is gone,
 * it is at the first act of what is chosen now, or back at the row of what was chosen before. Gives a place for the list
 * and the form, and what says that the next one is new.
 */
export function useKitFocus(chosen: Chosen | null): {
  readonly place: RefObject<HTMLDivElement | null>;
  readonly isNext: () => void;
} {
  const place = useRef<HTMLDivElement>(null);
  const isNew = useRef(false);
  const before = useRef<Chosen | null>(null);
  const inSight = (selector: string): HTMLElement | undefined =>
    [...(place.current?.querySelectorAll<HTMLElement>(selector) ?? [])].find((each) =>
      each.checkVisibility(),
    );
  useFocusGoesOn(chosen, () => {
    if (chosen) return inSight('.kit-form button');
    const row = before.current && inSight(`[data-row="${CSS.escape(rowKey(before.current))}"]`);
    return row ?? inSight('.kit-row');
  });
  useEffect(() => {
    before.current = chosen;
    if (!chosen || !isNew.current) return;
    isNew.current = false;
    place.current?.querySelector<HTMLElement>('.kit-form input')?.focus();
  }, [chosen]);
  return {
    place,
    isNext: () => {
      isNew.current = true;
    },
  };
}
