import { type ReactNode, useEffect, useRef } from 'react';
import { bringIntoSight } from '../parts/bringIntoSight';

/** What the sheet is about. As it comes it is brought into sight and takes the focus, since what was pressed for it is gone. */
export function Head({ children }: { readonly children: ReactNode }) {
  const head = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    bringIntoSight('.merge');
    head.current?.focus({ preventScroll: true });
  }, []);
  return (
    <h3 ref={head} tabIndex={-1}>
      {children}
    </h3>
  );
}
