import { useEffect, useState } from 'react';

/** Width and height of an element in CSS pixels, kept up to date; zeros until it is on the page. */
export function useElementSize(element: HTMLElement | null): {
  readonly width: number;
  readonly height: number;
} {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useEffect(() => {
    if (!element) return;
    const observer = new ResizeObserver(() =>
      setSize({ width: element.clientWidth, height: element.clientHeight }),
    );
    observer.observe(element);
    return () => observer.disconnect();
  }, [element]);
  return size;
}
