import type { Pane } from '../picture/painter';

/** Where an element lies on a canvas that covers `canvas`, in CSS pixels from its lower left; null when none of it shows. */
export function paneOf(element: HTMLElement, canvas: DOMRect): Pane | null {
  const box = element.getBoundingClientRect();
  if (box.width < 2 || box.height < 2) return null;
  const outside =
    box.right <= canvas.left ||
    box.left >= canvas.right ||
    box.bottom <= canvas.top ||
    box.top >= canvas.bottom;
  if (outside) return null;
  return {
    x: box.left - canvas.left,
    y: canvas.bottom - box.bottom,
    width: box.width,
    height: box.height,
  };
}

/** Whether two panes share any of the canvas. */
export const overlaps = (a: Pane, b: Pane): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
