import { type ReactNode, useEffect, useRef } from 'react';
import { useCrew } from '../../../desk/crew/useCrew';

/** A screen that lies over the others until it is left; the browser's back button and Escape leave it too. */
export function Layer({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  const back = useCrew((state) => state.back);
  const leave = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    const before = document.activeElement;
    leave.current?.focus();
    return () => {
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <section
      className="crew-layer"
      role="dialog"
      aria-label={label}
      onKeyDown={({ key }) => {
        if (key === 'Escape') back();
      }}
    >
      <header className="crew-layer-top">
        <h2>{label}</h2>
        <button type="button" ref={leave} onClick={back}>
          Close
        </button>
      </header>
      <div className="crew-scroll">{children}</div>
    </section>
  );
}
