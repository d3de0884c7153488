import { type ReactNode, useEffect, useRef } from 'react';

/** A sheet that lies over the page until it is left: by Escape, by a press beside it, or by the focus going on. */
export function Menu(props: {
  readonly word: string;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  const menu = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    const close = (event: PointerEvent): void => {
      const isBeside = event.target instanceof Node && !menu.current?.contains(event.target);
      if (menu.current?.open && isBeside) menu.current.open = false;
    };
    // While it is caught on its way down: the drawing keeps its presses to itself.
    window.addEventListener('pointerdown', close, true);
    return () => window.removeEventListener('pointerdown', close, true);
  }, []);
  return (
    <details
      className={props.className ? `menu ${props.className}` : 'menu'}
      ref={menu}
      onKeyDown={(event) => {
        if (event.key !== 'Escape' || !menu.current?.open) return;
        event.stopPropagation();
        menu.current.open = false;
        menu.current.querySelector('summary')?.focus();
      }}
      onBlur={(event) => {
        const to = event.relatedTarget;
        if (menu.current && to instanceof Node && !menu.current.contains(to)) menu.current.open = false;
      }}
    >
      <summary>{props.word}</summary>
      <div className="menu-sheet">{props.children}</div>
    </details>
  );
}
